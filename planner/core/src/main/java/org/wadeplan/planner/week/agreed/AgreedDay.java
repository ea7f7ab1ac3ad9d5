package org.wadeplan.planner.week.agreed;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.DeconStepRule;
import org.wadeplan.planner.round.DutyRules;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Travel;

/** One crew's agreed day: the drives, rinses, waits and loading around what was agreed. */
final class AgreedDay {

    private final Round round;
    private final String name;
    private final String depot;
    private final DutyRules duty;
    private final int rinseMin;
    private final DayBuilder day;
    private final List<Problem> findings;
    private Optional<AgreedVisit> before = Optional.empty();

    /** A visit, or cleanings that run at the same time. */
    private record Stretch(Instant start, Instant end, Optional<AgreedVisit> visit, List<DeconTask> cleanings) {}

    private AgreedDay(Round round, String name, DayBuilder day, List<Problem> findings) {
        this.round = round;
        this.name = name;
        this.depot = round.header().depot().id();
        this.duty = round.header().duty();
        this.rinseMin = round.biosecurity().steps().stream()
                .filter(step -> step.when().equals("same-water"))
                .mapToInt(DeconStepRule::minutes)
                .sum();
        this.day = day;
        this.findings = findings;
    }

    /** What a crew-day holds. */
    record Laid(List<Activity> activities, List<String> estimatedLegs) {}

    /** @param name of the crew-day, for findings: {@code crew A 2027-09-06} */
    static Laid of(
            Round round, String name, List<AgreedVisit> visits, List<DeconTask> cleanings, List<Problem> findings) {
        List<Stretch> stretches = stretches(visits, cleanings);
        Travel travel = new Travel(round);
        String depot = round.header().depot().id();
        Stretch first = stretches.get(0);
        int driveMin = first.visit()
                .map(visit -> travel.between(depot, visit.site().id()).minutes())
                .orElse(0);
        int leadMin = driveMin + round.header().duty().loadMin();
        DayBuilder builder = new DayBuilder(travel, depot, first.start().minus(Duration.ofMinutes(leadMin)));
        AgreedDay day = new AgreedDay(round, name, builder, findings);
        day.lay(stretches);
        return new Laid(builder.activities(), List.copyOf(builder.estimatedLegs()));
    }

    private static List<Stretch> stretches(List<AgreedVisit> visits, List<DeconTask> cleanings) {
        List<Stretch> all = new ArrayList<>();
        for (AgreedVisit visit : visits) {
            all.add(new Stretch(visit.start(), visit.end(), Optional.of(visit), List.of()));
        }
        List<DeconTask> together = new ArrayList<>();
        for (DeconTask task : cleanings) {
            boolean apart = !together.isEmpty()
                    && !task.start().isBefore(cleaning(together).end());
            if (apart) {
                all.add(cleaning(together));
                together.clear();
            }
            together.add(task);
        }
        if (!together.isEmpty()) {
            all.add(cleaning(together));
        }
        all.sort(Comparator.comparing(Stretch::start));
        return all;
    }

    private static Stretch cleaning(List<DeconTask> together) {
        Instant free = together.stream()
                .map(DeconTask::crewFree)
                .max(Instant::compareTo)
                .orElseThrow();
        return new Stretch(together.get(0).start(), free, Optional.empty(), List.copyOf(together));
    }

    private void lay(List<Stretch> stretches) {
        day.stay(ActivityKind.LOAD, duty.loadMin(), List.of(), "load and check");
        boolean cleaned = false;
        for (Stretch stretch : stretches) {
            boolean changesKit = cleaned;
            stretch.visit().ifPresentOrElse(visit -> goTo(visit, changesKit), () -> clean(stretch));
            cleaned = stretch.visit().isEmpty();
        }
        day.travelTo(depot, Optional.empty());
        day.stay(ActivityKind.UNLOAD, duty.unloadMin(), List.of(), "unload");
    }

    private void goTo(AgreedVisit visit, boolean changesKit) {
        checkReached(visit.name(), visit.start(), visit.site().id());
        before.ifPresent(last -> rinse(last, visit));
        int driveMin = day.driveMin(visit.site().id());
        if (changesKit) {
            int spareMin = Math.max(0, day.minutesUntil(visit.start()) - driveMin);
            int loadMin = Math.min(duty.loadMin(), spareMin);
            day.waitUntil(visit.start().minus(Duration.ofMinutes(driveMin + loadMin)), "before loading");
            day.stay(ActivityKind.LOAD, loadMin, List.of(), "change kit set, load and check");
        }
        day.travelTo(visit.site().id(), Optional.of(visit.start()));
        day.waitUntil(visit.start(), "until the agreed start");
        day.visit(visit);
        before = Optional.of(visit);
    }

    /** Kit that goes from one site to the next is checked and rinsed in between, as far as the agreed times leave room. */
    private void rinse(AgreedVisit last, AgreedVisit next) {
        List<String> shared =
                last.kitSets().stream().filter(next.kitSets()::contains).toList();
        if (shared.isEmpty() || last.site().equals(next.site())) {
            return;
        }
        int driveMin = day.driveMin(next.site().id());
        int spareMin = Math.max(0, day.minutesUntil(next.start()) - driveMin);
        if (spareMin < rinseMin) {
            findings.add(Problem.warning(
                    "agreed-rinse-short",
                    SourcePlace.part("agreed_week.csv", name + ", " + next.name()),
                    spareMin + " min are left to check and rinse " + String.join(", ", shared) + " after "
                            + last.name(),
                    rinseMin + " min between two sites of one water",
                    "start it " + (rinseMin - spareMin) + " min later, or keep boots and gear dry at the site before"));
        }
        day.stay(
                ActivityKind.RINSE, Math.min(rinseMin, spareMin), shared, "check and rinse between sites of one water");
    }

    private void clean(Stretch stretch) {
        List<String> kitSets =
                stretch.cleanings().stream().map(DeconTask::kitSet).toList();
        checkReached("cleaning of " + String.join(", ", kitSets), stretch.start(), depot);
        day.travelTo(depot, Optional.of(stretch.start()));
        day.waitUntil(stretch.start(), "until the agreed start");
        day.clean(stretch.start(), stretch.end(), kitSets);
        before = Optional.empty();
    }

    private void checkReached(String what, Instant start, String place) {
        int driveMin = day.driveMin(place);
        Instant soonest = day.clock().plus(Duration.ofMinutes(driveMin));
        if (soonest.isAfter(start)) {
            Duration mayBeSaved = before.map(visit -> Duration.between(visit.p50End(), visit.end()))
                    .orElse(Duration.ZERO);
            boolean inHalfOfAllCases = !soonest.minus(mayBeSaved).isAfter(start);
            findings.add(new Problem(
                    inHalfOfAllCases ? Severity.WARNING : Severity.ERROR,
                    "agreed-too-soon",
                    SourcePlace.part("agreed_week.csv", name + ", " + what),
                    "it starts at " + clock(start) + ", and the crew is there at " + clock(soonest) + ": free at "
                            + day.place() + " at " + clock(day.clock()) + ", " + driveMin + " min to drive"
                            + (inHalfOfAllCases ? " (in time in half of all cases)" : ""),
                    clock(soonest) + " or later",
                    "agree on another start, or let another crew do it"));
        }
    }

    private String clock(Instant time) {
        return time.atZone(round.header().zone()).toLocalDateTime().toString().replace('T', ' ');
    }
}
