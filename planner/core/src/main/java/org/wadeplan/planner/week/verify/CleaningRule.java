package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.DeconTask;

/** A cleaning takes at least the sum of its steps, and the crew that does it has the time for it in its day. */
final class CleaningRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (DeconTask task : facts.week().decon()) {
            int busy = task.steps().stream()
                    .filter(DeconStep::crewBusy)
                    .mapToInt(DeconStep::minutes)
                    .sum();
            int all = task.steps().stream().mapToInt(DeconStep::minutes).sum();
            if (PlanFacts.minutes(task.start(), task.crewFree()) < busy
                    || PlanFacts.minutes(task.start(), task.released()) < all) {
                problems.add(PlanFacts.broken(
                        "cleaning",
                        task.kitSet(),
                        "released " + PlanFacts.minutes(task.start(), task.released()) + " min after its start",
                        busy + " min of work and " + all + " min in all"));
            }
            boolean inDay = facts.week().crewDays().stream()
                    .filter(day -> day.crew().equals(task.crew()))
                    .flatMap(day -> day.activities().stream())
                    .anyMatch(activity -> activity.kind() == ActivityKind.DECON
                            && activity.kitSets().contains(task.kitSet())
                            && !activity.start().isAfter(task.start())
                            && !activity.end().isBefore(task.crewFree()));
            if (!inDay) {
                problems.add(PlanFacts.broken(
                        "cleaning",
                        task.kitSet(),
                        "crew " + task.crew() + " has no time for it at " + facts.clock(task.start()),
                        "a cleaning in its day"));
            }
        }
        return problems;
    }
}
