package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.round.DeconStepRule;
import org.wadeplan.planner.week.DeconTask;

/** What was cleaned dries for as long as the round's steps ask of every cleaning, before it is released. */
final class DryingRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        int askedMin = facts.round().biosecurity().steps().stream()
                .filter(rule -> rule.step().equals("dry") && rule.when().equals("always"))
                .mapToInt(DeconStepRule::minutes)
                .max()
                .orElse(0);
        List<Problem> problems = new ArrayList<>();
        for (DeconTask task : facts.week().decon()) {
            int stepMin = task.steps().stream()
                    .filter(step -> step.step().equals("dry"))
                    .mapToInt(DeconStep::minutes)
                    .max()
                    .orElse(0);
            int leftMin = PlanFacts.minutes(task.crewFree(), task.released());
            if (Math.min(stepMin, leftMin) < askedMin) {
                problems.add(PlanFacts.broken(
                        "drying",
                        task.kitSet(),
                        "the cleaning at " + facts.clock(task.start()) + " leaves " + Math.min(stepMin, leftMin)
                                + " min to dry",
                        askedMin + " min of drying before it is released"));
            }
        }
        return problems;
    }
}
