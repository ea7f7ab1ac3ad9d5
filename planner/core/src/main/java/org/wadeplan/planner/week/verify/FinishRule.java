package org.wadeplan.planner.week.verify;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** A part ends by the latest finish of its method. */
final class FinishRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (Visit visit : facts.visits()) {
            Optional<LocalTime> latest = visit.part().flatMap(MethodPart::latestFinish);
            if (latest.isPresent()
                    && visit.activity().end().isAfter(facts.at(visit.day().date(), latest.get()))) {
                problems.add(PlanFacts.broken(
                        "finish",
                        visit.name(),
                        "ends at " + facts.clock(visit.activity().end()),
                        "by " + latest.get()));
            }
        }
        return problems;
    }
}
