package org.wadeplan.planner.effort;

import java.util.List;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.PackSeconds;
import org.wadeplan.planner.round.Round;

/** The round's own figures that effort rests on. */
record EffortRules(
        ConductivityRule conductivityRule,
        PowerTransfer powerTransfer,
        double reserveFactor,
        List<PackSeconds> packSeconds) {

    static EffortRules of(Round round) {
        return new EffortRules(
                round.header().conductivityRule(),
                new PowerTransfer(round.header().fishConductivityUsCm()),
                round.header().batteryReserveFactor(),
                round.store().packSeconds());
    }
}
