package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.effort.PartEffort;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** A visit has at least its median time on site; less than its 80th percentile is doubtful. */
final class OnSiteTimeRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (Visit visit : facts.visits()) {
            Optional<PartEffort> effort = facts.plan()
                    .effort(visit.activity().site().orElse(""))
                    .flatMap(one -> visit.activity().part().flatMap(one::part));
            int minutes = visit.activity().minutes();
            if (effort.isEmpty()) {
                problems.add(PlanFacts.broken(
                        "on-site", visit.name(), "no time on site is known for it", "P50 and P80 minutes"));
            } else if (minutes < effort.get().p50Min()) {
                problems.add(PlanFacts.broken(
                        "on-site",
                        visit.name(),
                        minutes + " min",
                        "at least P50, " + effort.get().p50Min() + " min"));
            } else if (minutes < effort.get().p80Min()) {
                problems.add(PlanFacts.doubtful(
                        "on-site",
                        visit.name(),
                        minutes + " min",
                        "P80, " + effort.get().p80Min() + " min"));
            }
        }
        return problems;
    }
}
