package org.wadeplan.desktop.week;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Placement;
import org.wadeplan.planner.week.Unplaced;

/** Why a bar stands where it does, from what the planner said of it. */
final class BarFacts {

    private final Round round;
    private final RoundPlan plan;
    private final ZoneId zone;
    private final List<Fact> facts = new ArrayList<>();

    private BarFacts(Round round, RoundPlan plan) {
        this.round = round;
        this.plan = plan;
        this.zone = round.header().zone();
    }

    static List<Fact> ofBar(Round round, RoundPlan plan, String id) {
        BarFacts made = new BarFacts(round, plan);
        BarId.activity(plan, id).ifPresent(placed -> made.activity(placed.day(), placed.activity()));
        BarId.decon(plan, id).ifPresent(made::cleaning);
        return List.copyOf(made.facts);
    }

    /** For a site that has no bar of its own selected: its method, and why it is not placed, where it is not. */
    static List<Fact> ofSite(Round round, RoundPlan plan, String site) {
        BarFacts made = new BarFacts(round, plan);
        made.add(
                "fact.what", site + round.site(site).map(at -> ", " + at.name()).orElse(""));
        plan.week().unplaced().stream()
                .filter(left -> left.site().equals(site))
                .map(Unplaced::reasons)
                .forEach(reasons -> made.add("fact.notPlaced", String.join("\n", reasons)));
        made.visits(site);
        made.method(site);
        plan.reach(site).ifPresent(reach -> made.add("fact.reach", reachWords(reach)));
        return List.copyOf(made.facts);
    }

    private void visits(String site) {
        for (CrewDay day : plan.week().crewDays()) {
            for (Activity visit : day.visits()) {
                if (visit.site().filter(site::equals).isPresent()) {
                    add("fact.visit", Words.of("fact.visitLine", WeekBuilder.what(visit), day.crew(), when(visit)));
                    WeekBuilder.placement(plan, visit).ifPresent(placed -> add("fact.whyHere", placed.binding()));
                    permissions(site, day);
                }
            }
        }
    }

    private static String reachWords(Reach reach) {
        return Words.of(
                "fact.reachLine",
                String.format(Locale.ROOT, "%.0f", reach.rule().lengthM()),
                stakeWords(reach.start()),
                stakeWords(reach.end()),
                reach.stakeBank().name().toLowerCase(Locale.ROOT));
    }

    private static String stakeWords(Stake stake) {
        return String.format(
                Locale.ROOT,
                "%s (E %.0f N %.0f; %.5f, %.5f)",
                stake.name(),
                stake.at().eastM(),
                stake.at().northM(),
                stake.lonLat().latDeg(),
                stake.lonLat().lonDeg());
    }

    private void add(String headKey, String text) {
        if (!text.isBlank()) {
            facts.add(new Fact(Words.of(headKey), text));
        }
    }

    private void activity(CrewDay day, Activity activity) {
        add("fact.what", WeekBuilder.what(activity));
        add("fact.when", when(activity));
        add("fact.who", Words.of("fact.crew", day.crew(), people(day), day.vehicle()));
        WeekBuilder.placement(plan, activity).ifPresent(this::placement);
        activity.site().ifPresent(site -> {
            permissions(site, day);
            method(site);
        });
        add("fact.kit", String.join(", ", activity.kitSets()));
        add("fact.basis", activity.note());
    }

    private String people(CrewDay day) {
        return day.people().stream()
                .map(id -> round.person(id).map(Person::name).orElse(id))
                .collect(Collectors.joining(", "));
    }

    private String when(Activity activity) {
        String span = Words.of(
                "fact.span",
                Times.dayClock(activity.start(), zone),
                Times.clock(activity.end(), zone),
                Times.minutes(activity.minutes()));
        return span
                + activity.p50End()
                        .map(end -> "\n"
                                + Words.of("fact.median", Times.clock(end, zone), Times.clock(activity.end(), zone)))
                        .orElse("");
    }

    private void placement(Placement placed) {
        add("fact.whyHere", placed.binding());
        if (placed.windowStart().isPresent() && placed.windowEnd().isPresent()) {
            add(
                    "fact.window",
                    Words.of(
                            "fact.windowSpan",
                            Times.dayClock(placed.windowStart().get(), zone),
                            Times.dayClock(placed.windowEnd().get(), zone)));
        }
        add("fact.slack", Words.of("fact.slackLater", Times.minutes(placed.slackMin())));
    }

    private void permissions(String site, CrewDay day) {
        List<String> lines = new ArrayList<>();
        for (Permission permission : plan.permissions()) {
            if (permission.site().equals(site) && permission.date().equals(day.date())) {
                permission.blocks().forEach(block -> lines.add(Words.of("fact.blocked", block)));
                permission.awaiting().forEach(awaited -> lines.add(Words.of("fact.notAuthorised", awaited)));
                lines.addAll(permission.conditions());
                permission.accessFrom().ifPresent(from -> lines.add(Words.of("fact.accessFrom", from)));
                permission.accessUntil().ifPresent(until -> lines.add(Words.of("fact.accessUntil", until)));
            }
        }
        add("fact.permission", String.join("\n", lines.stream().distinct().toList()));
    }

    private void method(String site) {
        plan.decision(site).ifPresent(decision -> add("fact.method", methodLine(decision)));
    }

    private String methodLine(MethodDecision decision) {
        if (decision.overridden().isPresent()) {
            return label(MethodWords.method(decision)) + "\n" + MethodWords.why(decision);
        }
        return decision.outcome()
                .fold(
                        chosen -> Words.of("fact.byRule", label(chosen.method()), chosen.rule(), decision.table())
                                + "\n"
                                + chosen.readings().stream()
                                        .map(reading -> Words.of(
                                                "fact.reading", reading.input(), reading.value(), reading.cell()))
                                        .collect(Collectors.joining("\n")),
                        undecided -> Words.of("fact.undecided", String.join(", ", undecided.missing())),
                        noRule -> Words.of("fact.noRule"),
                        clash -> Words.of("fact.clash", clash.rules()));
    }

    private String label(String method) {
        return round.method(method).map(found -> found.label()).orElse(method);
    }

    private void cleaning(DeconTask task) {
        add("fact.what", Words.of("fact.cleaning", task.kitSet(), String.join(", ", task.fromWaters())));
        add(
                "fact.when",
                Words.of(
                        "fact.cleaningSpan",
                        Times.dayClock(task.start(), zone),
                        Times.dayClock(task.crewFree(), zone),
                        Times.dayClock(task.released(), zone)));
        add("fact.who", Words.of("week.crewLane", task.crew()));
        add("fact.whyHere", task.reason());
        add("fact.steps", task.steps().stream().map(BarFacts::step).collect(Collectors.joining("\n")));
        add(
                "fact.covers",
                task.covers().stream().map(BarFacts::cover).distinct().collect(Collectors.joining("\n")));
    }

    private static String step(DeconStep step) {
        return Times.minutes(step.minutes()) + "  " + step.label()
                + step.target().map(target -> ", " + target).orElse("")
                + step.resource().map(resource -> " (" + resource + ")").orElse("");
    }

    private static String cover(Turnaround.Cover cover) {
        return Words.of(
                "fact.cover",
                cover.pest(),
                cover.material().name().toLowerCase(Locale.ROOT),
                cover.treatment(),
                cover.grade());
    }
}
