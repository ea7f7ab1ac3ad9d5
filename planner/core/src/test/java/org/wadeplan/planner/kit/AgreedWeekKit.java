package org.wadeplan.planner.kit;

import java.util.OptionalLong;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Progress;

/** The troubled demo round with its agreed week, laid out once for all tests. */
public final class AgreedWeekKit {

    public static final Round ROUND = DemoRound.troubled();
    public static final RoundPlan PLAN = of(ROUND);

    private AgreedWeekKit() {}

    /** The week in force of a round that has an agreed one. */
    public static RoundPlan of(Round round) {
        return RoundPlanner.inForce(round, new PlanOptions(OptionalLong.empty(), 0), Progress.NONE);
    }
}
