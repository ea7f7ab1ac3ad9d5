package org.wadeplan.planner.week.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.wadeplan.planner.effort.PartEffort;
import org.wadeplan.planner.kit.VisitKit;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.permission.PermissionCheck;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.KitPer;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Priority;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.Unplaced;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WindowFinder;
import org.wadeplan.planner.week.WindowSearch;
import org.wadeplan.planner.week.rule.CrewCompetence;

/** Makes a job of every site that is to be visited, puts a reserve in for a site that is blocked, explains the rest. */
final class JobBuilder {

    /** What stops refer to by index. */
    record Frame(List<LocalDate> dates, List<Slot> slots, List<String> places, List<CertifiedKind> kinds) {}

    private final WeekInputs inputs;
    private final Round round;
    private final WindowFinder windows;
    private final MinuteAxis axis;
    private final Frame frame;
    private final List<Stop> stops = new ArrayList<>();
    private final List<Job> jobs = new ArrayList<>();
    private final List<Unplaced> never = new ArrayList<>();

    JobBuilder(WeekInputs inputs, WindowFinder windows, MinuteAxis axis, Frame frame) {
        this.inputs = inputs;
        this.round = inputs.round();
        this.windows = windows;
        this.axis = axis;
        this.frame = frame;
    }

    List<Stop> stops() {
        return stops;
    }

    List<Job> jobs() {
        return jobs;
    }

    List<Unplaced> never() {
        return never;
    }

    void build() {
        for (Site site : round.sites()) {
            if (site.reserveFor().isEmpty()) {
                List<String> obstacles = obstacles(site);
                if (obstacles.isEmpty()) {
                    addJob(site, site.priority(), "");
                } else {
                    standIn(site, obstacles);
                }
            }
        }
    }

    /** Why a site cannot be visited on any date; empty where nothing stands against it as a whole. */
    private List<String> obstacles(Site site) {
        Optional<MethodOutcome.Chosen> chosen = chosen(site);
        if (chosen.isEmpty()) {
            return List.of("The decision table gives no method for it.");
        }
        String method = chosen.get().method();
        Optional<Method> known = round.method(method);
        if (known.isEmpty()
                || known.get().kind() == MethodKind.NONE
                || known.get().parts().isEmpty()) {
            return List.of("Rule " + chosen.get().rule() + " says " + method + ": no visit.");
        }
        if (round.waterOf(site).isEmpty()) {
            return List.of("No row of the waters table holds it.");
        }
        if (inputs.effort(site.id()).isEmpty()) {
            return List.of("There is no time on site for it.");
        }
        List<Permission> permissions = frame.dates().stream()
                .map(date -> PermissionCheck.of(round, site, method, date))
                .toList();
        return permissions.stream().allMatch(Permission::blocked)
                ? permissions.stream()
                        .flatMap(permission -> permission.blocks().stream())
                        .distinct()
                        .toList()
                : List.of();
    }

    private Optional<MethodOutcome.Chosen> chosen(Site site) {
        return inputs.decision(site.id()).flatMap(decision -> decision.chosen());
    }

    private String methodName(Site site) {
        return chosen(site).map(MethodOutcome.Chosen::method).orElse("not decided");
    }

    private void standIn(Site site, List<String> obstacles) {
        List<String> reasons = new ArrayList<>(obstacles);
        for (Site reserve : round.sites()) {
            if (reserve.reserveFor().filter(site.id()::equals).isPresent()) {
                List<String> against = obstacles(reserve);
                if (against.isEmpty()) {
                    reasons.add(reserve.id() + " stands in its place.");
                    addJob(reserve, site.priority(), "in place of " + site.id() + ": " + obstacles.get(0));
                    break;
                }
                reasons.add("Reserve " + reserve.id() + " cannot stand in: " + against.get(0));
            }
        }
        never.add(new Unplaced(site.id(), methodName(site), List.copyOf(reasons)));
    }

    private void addJob(Site site, Priority priority, String note) {
        MethodOutcome.Chosen chosen = chosen(site).orElseThrow();
        Method method = round.method(chosen.method()).orElseThrow();
        List<Stop> parts = new ArrayList<>();
        for (MethodPart part : method.parts()) {
            Optional<PartEffort> effort = inputs.effort(site.id()).flatMap(found -> found.part(part.part()));
            if (effort.isEmpty()) {
                String why =
                        "There is no time on site for its part " + part.part().word() + ".";
                never.add(new Unplaced(site.id(), method.id(), List.of(why)));
                return;
            }
            parts.add(stop(site, chosen, part, effort.get(), stops.size() + parts.size(), parts.size()));
        }
        jobs.add(new Job(jobs.size(), site, priority, List.copyOf(parts), note));
        stops.addAll(parts);
    }

    private Stop stop(Site site, MethodOutcome.Chosen chosen, MethodPart part, PartEffort effort, int id, int order) {
        Water water = round.waterOf(site).orElseThrow();
        Optional<VisitKit> kit = inputs.kit(site.id(), part.part());
        List<WindowSearch> found = frame.dates().stream()
                .map(date -> windows.find(
                        site, part, effort.p80Min(), PermissionCheck.of(round, site, chosen.method(), date)))
                .toList();
        return new Stop(
                id,
                jobs.size(),
                order,
                site,
                frame.places().indexOf(site.id()),
                round.waters().indexOf(water),
                part,
                chosen.method(),
                effort.p50Min(),
                effort.p80Min(),
                wets(kit),
                wets(kit) ? kit.map(VisitKit::purposes).orElse(List.of()) : List.of(),
                found,
                found.stream().map(this::minutes).toArray(int[][]::new),
                kit.map(VisitKit::needs).map(this::certified).orElse(List.of()),
                whyNot(part, crewMin(part, chosen.crewMin()), found));
    }

    /** Every part that asks for a kit set counts as wet, a dry bed too: boots that walked it carry what lives there. */
    private static boolean wets(Optional<VisitKit> kit) {
        return kit.filter(one -> !one.purposes().isEmpty()).isPresent();
    }

    private static int crewMin(MethodPart part, OptionalInt byRule) {
        return Math.max(part.crewMin(), byRule.orElse(0));
    }

    private int[] minutes(WindowSearch found) {
        return found.fitting().stream()
                .flatMapToInt(window ->
                        java.util.stream.IntStream.of(axis.minute(window.opens()), axis.minute(window.closes())))
                .toArray();
    }

    private List<List<String>> whyNot(MethodPart part, int crewMin, List<WindowSearch> found) {
        List<List<String>> reasons = new ArrayList<>();
        for (Slot slot : frame.slots()) {
            List<String> against = new ArrayList<>(slot.lacks());
            against.addAll(CrewCompetence.lacks(round, slot.roster(), part, crewMin));
            WindowSearch day = found.get(slot.dateIndex());
            if (day.fitting().isEmpty()) {
                against.addAll(day.reasons());
            }
            reasons.add(List.copyOf(against));
        }
        return List.copyOf(reasons);
    }

    private List<Stop.CertifiedNeed> certified(List<KitNeed> needs) {
        List<Stop.CertifiedNeed> certified = new ArrayList<>();
        for (KitNeed need : needs) {
            for (int kind = 0; kind < frame.kinds().size(); kind++) {
                CertifiedKind known = frame.kinds().get(kind);
                if (known.kind().equals(need.kind())
                        && need.certificate()
                                .filter(known.certificate()::equals)
                                .isPresent()) {
                    int quantity = (int) Math.ceil(need.quantity());
                    certified.add(certified(kind, need.per(), quantity));
                }
            }
        }
        return List.copyOf(certified);
    }

    private static Stop.CertifiedNeed certified(int kind, KitPer per, int quantity) {
        return switch (per) {
            case PERSON -> new Stop.CertifiedNeed(kind, 0, quantity, 0);
            case LIVE_CIRCUIT_PERSON -> new Stop.CertifiedNeed(kind, 0, 0, quantity);
            case VISIT, CREW_DAY -> new Stop.CertifiedNeed(kind, quantity, 0, 0);
        };
    }
}
