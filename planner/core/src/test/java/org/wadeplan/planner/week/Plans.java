package org.wadeplan.planner.week;

import java.util.List;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.plan.PlanVersion;
import org.wadeplan.planner.plan.RoundPlan;

/** Whole plans around a week, for the tests of the check. */
public final class Plans {

    private Plans() {}

    public static RoundPlan of(WeekInputs inputs, WeekPlan week) {
        return new RoundPlan(
                inputs.round().header().id(),
                new PlanVersion("test", "", inputs.round().header().seed(), 0, "test"),
                List.of(),
                inputs.decisions(),
                inputs.efforts(),
                List.of(),
                inputs.turnarounds(),
                week,
                new KitPlan(List.of(), List.of()),
                List.of(),
                false,
                List.of());
    }
}
