package org.wadeplan.cli;

import java.util.List;
import org.wadeplan.planner.kit.ChargingPlan;
import org.wadeplan.planner.kit.DayWeights;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.PackCharge;
import org.wadeplan.planner.kit.ShortageSummary;
import org.wadeplan.planner.kit.StoreDefect;
import org.wadeplan.planner.kit.WeightCheck;
import org.wadeplan.planner.kit.wayout.ShortageWays;
import org.wadeplan.planner.kit.wayout.WaysOut;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Round;

/**
 * Everything that {@code kit list} says.
 *
 * @param week as agreed, or as planned now
 * @param shortages one line a kind, over the whole week
 * @param ticks what was ticked as loaded so far
 */
record KitReport(
        String week,
        List<ShortageSummary> shortages,
        List<ShortageWays> waysOut,
        List<WaysOut.VehicleFinding> vehicles,
        KitPlan kit,
        List<DayWeights> weights,
        List<PackCharge> charging,
        List<StoreDefect> notTaken,
        List<LoadTick> ticks) {

    static KitReport of(Round round, RoundPlan plan) {
        return new KitReport(
                round.log().agreed().isEmpty() ? "planned" : "agreed",
                ShortageSummary.of(plan.kit()),
                WaysOut.of(round, plan),
                WaysOut.vehicles(round, plan),
                plan.kit(),
                WeightCheck.of(round, plan.week().crewDays(), plan.kit()),
                ChargingPlan.of(round, plan.week().crewDays(), plan.kit()),
                StoreDefect.of(round),
                round.log().ticks());
    }

    boolean anythingShort() {
        return kit.anythingShort() || weights.stream().anyMatch(DayWeights::overPayload);
    }
}
