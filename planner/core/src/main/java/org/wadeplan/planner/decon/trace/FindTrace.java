package org.wadeplan.planner.decon.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.trace.TraceReport.ChangedLeg;
import org.wadeplan.planner.decon.trace.TraceReport.Spread;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WeekPlan;
import org.wadeplan.planner.week.verify.WeekVerifier;

/** Follows a find through the ledger of a week: what is exposed, where it may have come from and gone to, what changes. */
public final class FindTrace {

    private final Round round;
    private final RoundPlan plan;
    private final FindSpan span;
    private final TraceClock clock;

    private FindTrace(Round round, RoundPlan plan, Find find) {
        this.round = round;
        this.plan = plan;
        this.span = FindSpan.of(round, find);
        this.clock = new TraceClock(round.header().zone());
    }

    /**
     * What follows from the find. Nothing of the round or the plan is changed.
     *
     * @param plan of the week in force, as it was before the find
     */
    public static TraceReport of(Round round, RoundPlan plan, Find find) {
        return new FindTrace(round, plan, find).report();
    }

    /** The plan as it stands with the pest known: its later cleanings longer where they have to be. */
    public static RoundPlan planAfter(Round round, RoundPlan plan, Find find) {
        FindTrace trace = new FindTrace(round, plan, find);
        Round known = trace.span.applied(round);
        ExposureLedger ledger = ExposureLedger.of(round, plan.week(), plan.kit());
        List<ChangedCleaning> changes =
                new CleaningRecheck(known, ledger, trace.span).of(plan.week().decon());
        return trace.with(known, WeekShift.of(plan.week(), changes));
    }

    private TraceReport report() {
        Round known = span.applied(round);
        ExposureLedger ledger = ExposureLedger.of(round, plan.week(), plan.kit());
        List<ChangedCleaning> changes =
                new CleaningRecheck(known, ledger, span).of(plan.week().decon());
        WeekPlan week = WeekShift.of(plan.week(), changes);
        ExposureLedger again = ExposureLedger.of(known, week, plan.kit());
        LegTrace legs = new LegTrace(round, plan.week(), week, again);
        List<ChangedLeg> changed = changes.stream().map(legs::leg).toList();
        List<Spread> spreads = new SpreadTrace(known, span).of(again);
        List<Problem> broken = new ArrayList<>(legs.broken());
        broken.addAll(newFindings(known, week));
        broken.addAll(problems(spreads));
        long later = plan.week().decon().stream()
                .filter(task -> !task.start().isBefore(span.find().seen()))
                .count();
        return new TraceReport(
                span,
                new ExposedKits(known, span).of(ledger, again),
                spreads,
                new OtherWaters(round, span, again).of(spreads),
                changed,
                Math.toIntExact(later - changed.size()),
                broken.stream().distinct().sorted(Problem.WORST_FIRST).toList(),
                NoticesDue.of(round, span, spreads));
    }

    /** What the rules of the week say against the changed week and did not say against the week before. */
    private List<Problem> newFindings(Round known, WeekPlan week) {
        Set<String> before =
                WeekVerifier.verify(round, plan).stream().map(FindTrace::key).collect(Collectors.toSet());
        return WeekVerifier.verify(known, with(known, week)).stream()
                .filter(problem -> problem.severity() == Severity.ERROR && !before.contains(key(problem)))
                .toList();
    }

    private static String key(Problem problem) {
        return problem.code() + " " + problem.place();
    }

    private RoundPlan with(Round known, WeekPlan week) {
        return new RoundPlan(
                plan.round(),
                plan.version(),
                plan.reaches(),
                plan.decisions(),
                plan.efforts(),
                plan.permissions(),
                TurnaroundPlanner.table(known),
                week,
                plan.kit(),
                plan.briefings(),
                plan.complete(),
                plan.findings());
    }

    /** One for each kit set or item and for what has happened and what has not: the first visit, and how many more. */
    private List<Problem> problems(List<Spread> spreads) {
        Map<String, List<Spread>> groups = new LinkedHashMap<>();
        spreads.forEach(spread -> groups.computeIfAbsent(
                        spread.id() + " " + spread.water() + " " + spread.happened(), key -> new ArrayList<>())
                .add(spread));
        return groups.values().stream()
                .map(group -> problem(group.get(0), group.size() - 1))
                .toList();
    }

    private Problem problem(Spread spread, int more) {
        boolean error = spread.happened() ? spread.pieces() == 1 : !spread.item();
        String who = spread.pieces() > 1 ? "one of the " + spread.pieces() + " of " + spread.id() : spread.id();
        String moreVisits = more == 0 ? "" : " (and to " + more + " more visits there)";
        return new Problem(
                error ? Severity.ERROR : Severity.WARNING,
                spread.happened() ? "find-may-have-spread" : "find-would-spread",
                SourcePlace.part(spread.item() ? "store.csv" : "kit_sets.csv", spread.id()),
                who + (spread.happened() ? " went" : " is to go") + " from " + spread.from() + " ("
                        + span.find().water() + ") to " + spread.where() + " (" + spread.water() + ") at "
                        + clock.at(spread.at()) + moreVisits + " without a treatment against "
                        + span.find().pest() + " that counts and is over by then",
                "treated on every material, and released, before another water",
                spread.happened()
                        ? "count " + spread.water() + " as suspected of "
                                + span.find().pest() + " in water_pests.csv, and have it looked for there"
                        : "take another one, clean it first, or leave it behind");
    }
}
