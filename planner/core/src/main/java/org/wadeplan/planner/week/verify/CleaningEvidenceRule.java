package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.week.DeconTask;

/**
 * What a cleaning claims to cover stands in the round's treatments, not refused there, and its steps do it: in that mode, for
 * long enough, hot or strong enough. A cleaning whose soak was struck out or became a spray, or whose treatment was renamed,
 * covers nothing.
 */
final class CleaningEvidenceRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        CleaningSteps steps = new CleaningSteps(facts.round());
        List<Problem> problems = new ArrayList<>();
        for (DeconTask task : facts.week().decon()) {
            for (Turnaround.Cover cover : task.covers()) {
                steps.lack(task, cover)
                        .ifPresent(expected -> problems.add(PlanFacts.broken(
                                "cleaning-evidence",
                                task.kitSet(),
                                "the cleaning at " + facts.clock(task.start()) + " claims to cover " + cover.pest()
                                        + " on " + cover.material() + " by " + cover.treatment(),
                                expected)));
            }
        }
        return problems;
    }
}
