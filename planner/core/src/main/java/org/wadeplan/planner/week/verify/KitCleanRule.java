package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.KitSet;

/** No kit set enters a water with anything of another water on it: it is cleaned, released and covered by evidence first; none is left dirty. */
final class KitCleanRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (KitSet set : facts.round().store().kitSets()) {
            problems.addAll(new KitTrail(facts, set).follow());
        }
        return problems;
    }
}
