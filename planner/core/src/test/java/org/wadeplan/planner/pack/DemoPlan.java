package org.wadeplan.planner.pack;

import java.util.OptionalLong;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Progress;

/** A demo round taken through the steps before the pack, with a short search. */
final class DemoPlan {

    private static final PlanOptions OPTIONS = new PlanOptions(OptionalLong.empty(), 200);

    private DemoPlan() {}

    static RoundPlan of(Round round) {
        return RoundPlanner.plan(round, OPTIONS, Progress.NONE);
    }
}
