package org.wadeplan.planner.kit.wayout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.LoadPlanner;
import org.wadeplan.planner.kit.VisitKit;
import org.wadeplan.planner.kit.VisitNeeds;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;
import org.wadeplan.planner.week.agreed.AgreedWeek;
import org.wadeplan.planner.week.verify.WeekVerifier;

/** Lays the week out again after a change, loads it and holds it against every rule of the week. */
final class Replan {

    private final Round round;
    private final RoundPlan plan;
    private final List<AgreedTask> tasks;
    private final Trial before;

    Replan(Round round, RoundPlan plan) {
        this.round = round;
        this.plan = plan;
        this.tasks = round.log().agreed().isEmpty()
                ? tasks(plan.week())
                : round.log().agreed();
        this.before = trial(round, tasks);
    }

    Round round() {
        return round;
    }

    /** The lines of the week in force: as agreed, or the planned week written as if it were. */
    List<AgreedTask> tasks() {
        return tasks;
    }

    /** The week as it is. */
    Trial before() {
        return before;
    }

    /** The crew's next working day. */
    Optional<CrewDay> next(CrewDay day) {
        return before.week().crewDays().stream()
                .filter(other -> other.crew().equals(day.crew()) && other.date().isAfter(day.date()))
                .min(Comparator.comparing(CrewDay::date));
    }

    Trial trial(Round changed, List<AgreedTask> changedTasks) {
        List<VisitKit> needs = VisitNeeds.of(changed, plan.decisions(), plan.efforts());
        WeekInputs inputs = new WeekInputs(changed, plan.decisions(), plan.efforts(), needs, plan.turnarounds());
        AgreedWeek.Laid laid = AgreedWeek.lay(inputs, changedTasks);
        KitPlan kit = LoadPlanner.plan(changed, needs, plan.efforts(), laid.week());
        List<Problem> found = new ArrayList<>(laid.findings());
        found.addAll(WeekVerifier.verify(changed, with(laid.week(), kit)));
        Map<String, Problem> errors = new LinkedHashMap<>();
        found.stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .forEach(problem -> errors.putIfAbsent(key(problem), problem));
        return new Trial(laid.week(), kit, errors);
    }

    private RoundPlan with(WeekPlan week, KitPlan kit) {
        return new RoundPlan(
                plan.round(),
                plan.version(),
                plan.reaches(),
                plan.decisions(),
                plan.efforts(),
                plan.permissions(),
                plan.turnarounds(),
                week,
                kit,
                plan.briefings(),
                plan.complete(),
                plan.findings());
    }

    /**
     * Two errors are the same where they break one rule at one place for one reason, whatever the clock says. Items that two
     * crews want at a time are wanted by both, whichever crew the rule happens to name.
     */
    private static String key(Problem problem) {
        String row = problem.place().row().orElse("");
        boolean ofBoth = problem.code().equals("week-certificate");
        return problem.code() + "|" + (ofBoth ? row.replaceAll("crew \\S+ ", "") : row) + "|"
                + problem.found().replaceAll("\\d{4}-\\d{2}-\\d{2}", "#").replaceAll("\\d+", "#");
    }

    private static List<AgreedTask> tasks(WeekPlan week) {
        List<AgreedTask> tasks = new ArrayList<>();
        for (CrewDay day : week.crewDays()) {
            for (Activity visit : day.visits()) {
                tasks.add(new AgreedTask(
                        day.date(),
                        day.crew(),
                        visit.start(),
                        visit.site(),
                        visit.part(),
                        visit.kitSets(),
                        Optional.empty()));
            }
        }
        for (DeconTask task : week.decon()) {
            week.crewDays().stream()
                    .filter(day ->
                            day.crew().equals(task.crew()) && !day.start().isAfter(task.start()))
                    .reduce((first, last) -> last.date().isAfter(first.date()) ? last : first)
                    .ifPresent(day -> tasks.add(new AgreedTask(
                            day.date(),
                            task.crew(),
                            task.start(),
                            Optional.empty(),
                            Optional.empty(),
                            List.of(task.kitSet()),
                            Optional.empty())));
        }
        return List.copyOf(tasks);
    }
}
