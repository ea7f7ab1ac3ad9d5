package org.wadeplan.planner.pack;

import java.util.OptionalLong;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Progress;

/** A plan of a demo round, with little search: enough for pages. */
final class DemoPlan {

    private static final int ITERATIONS = 200;

    private DemoPlan() {}

    static RoundPlan of(Round round) {
        return RoundPlanner.plan(round, new PlanOptions(OptionalLong.empty(), ITERATIONS), Progress.NONE);
    }
}
