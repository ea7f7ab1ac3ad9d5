package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What must hold of power transfer in any water (derived from the formulas). */
class PowerTransferPropertyTest {

    @Property(seed = "20270906")
    void rescalingThereAndBackGivesTheSameVoltage(
            @ForAll @DoubleRange(min = 1, max = 5000) double from,
            @ForAll @DoubleRange(min = 1, max = 5000) double to,
            @ForAll @DoubleRange(min = 40, max = 200) double fish) {
        PowerTransfer transfer = new PowerTransfer(fish);
        double there = transfer.rescaledVoltageV(200, from, to);
        assertThat(transfer.rescaledVoltageV(there, to, from)).isCloseTo(200, within(1e-9));
        assertThat(there).isCloseTo(200 * from * (to + fish) / (to * (from + fish)), within(1e-6));
    }

    @Property(seed = "20270906")
    void powerIsLeastWhereWaterAndFishConductAlikeAndSofterWaterAsksForMoreVoltage(
            @ForAll @DoubleRange(min = 1, max = 5000) double ambient) {
        PowerTransfer transfer = new PowerTransfer(115);
        assertThat(transfer.powerMultiplier(ambient)).isGreaterThanOrEqualTo(1);
        assertThat(transfer.voltageMultiplier(ambient)).isGreaterThan(transfer.voltageMultiplier(ambient + 1));
        assertThat(transfer.voltageMultiplier(ambient)).isGreaterThan(0.5);
    }

    @Example
    void conductivityMustBeAboveZero() {
        assertThatThrownBy(() -> new PowerTransfer(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PowerTransfer(115).voltageMultiplier(0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PowerTransfer(115).currentMultiplier(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
