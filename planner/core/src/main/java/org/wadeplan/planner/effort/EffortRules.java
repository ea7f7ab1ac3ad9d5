package org.wadeplan.planner.effort;

import java.util.List;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.ElectricRules;
import org.wadeplan.planner.round.PackSeconds;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VoltageCeiling;

/** The round's own figures that effort rests on. */
record EffortRules(
        ConductivityRule conductivityRule,
        PowerTransfer powerTransfer,
        double reserveFactor,
        List<PackSeconds> packSeconds,
        List<VoltageCeiling> voltageCeilings,
        ElectricRules electric) {

    VoltageAdvice.Rules advice() {
        return new VoltageAdvice.Rules(powerTransfer, electric.limits(), voltageCeilings);
    }

    static EffortRules of(Round round) {
        return new EffortRules(
                round.header().conductivityRule(),
                new PowerTransfer(round.header().fishConductivityUsCm()),
                round.header().batteryReserveFactor(),
                round.store().packSeconds(),
                round.store().voltageCeilings(),
                round.header().electric());
    }
}
