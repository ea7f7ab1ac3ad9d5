package org.wadeplan.planner.effort;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.ElectricLimits;
import org.wadeplan.planner.round.VoltageCeiling;

/**
 * The voltage that worked, rescaled to today's water; held back where the water is too warm or the round's ceiling is
 * lower.
 *
 * @param voltageV empty where none is advised
 * @param ceiling the round's row for today's water; empty where none covers it or the conductivity is not known
 * @param words the sum and its source, or why there is none
 * @param held what speaks against any voltage, first among the cautions
 */
record VoltageAdvice(OptionalInt voltageV, Optional<VoltageCeiling> ceiling, String words, List<String> held) {

    private static final String KEEP = " Keep frequency and duty as they were: catches compare only then.";

    /** Rules that advice rests on. */
    record Rules(PowerTransfer transfer, ElectricLimits limits, List<VoltageCeiling> ceilings) {

        /** The row whose conductivity is the highest that the water reaches. */
        Optional<VoltageCeiling> ceiling(double ambientUsCm) {
            return ceilings.stream()
                    .filter(row -> row.conductivityMinUsCm() <= ambientUsCm)
                    .max(Comparator.comparingDouble(VoltageCeiling::conductivityMinUsCm));
        }
    }

    static VoltageAdvice of(double lastV, OptionalDouble thenUsCm, Conditions today, Rules rules) {
        OptionalDouble todayUsCm = today.conductivityUsCm();
        Optional<VoltageCeiling> ceiling =
                todayUsCm.isPresent() ? rules.ceiling(todayUsCm.getAsDouble()) : Optional.empty();
        Optional<String> tooWarm = today.waterTempC().isPresent()
                ? WaterCautions.stop(today.waterTempC().getAsDouble(), rules.limits())
                : Optional.empty();
        if (tooWarm.isPresent()) {
            return new VoltageAdvice(
                    OptionalInt.empty(),
                    ceiling,
                    "No voltage is advised: the water is too warm.",
                    List.of(tooWarm.get()));
        }
        if (!usable(thenUsCm) || !usable(todayUsCm)) {
            return new VoltageAdvice(
                    OptionalInt.empty(),
                    ceiling,
                    "No voltage is advised: it takes the ambient conductivity of then and of today.",
                    List.of());
        }
        double exactV = rules.transfer().rescaledVoltageV(lastV, thenUsCm.getAsDouble(), todayUsCm.getAsDouble());
        String sum = sum(rules.transfer(), todayUsCm.getAsDouble(), Math.round(exactV));
        return ceiling.filter(row -> Math.round(exactV) > row.voltageMaxV())
                .map(row -> above(row, sum))
                .orElseGet(() -> new VoltageAdvice(
                        OptionalInt.of((int) Math.round(exactV)), ceiling, sum + "." + KEEP, List.of()));
    }

    private static VoltageAdvice above(VoltageCeiling row, String sum) {
        String words = sum + ", above this round's ceiling of " + Plain.number(row.voltageMaxV(), 0)
                + " V, so no voltage is advised.";
        return new VoltageAdvice(
                OptionalInt.empty(),
                Optional.of(row),
                words,
                List.of("STOP at " + Plain.number(row.voltageMaxV(), 0) + " V, the ceiling for this water ("
                        + row.source() + "). Where fish do not respond below it, use another method."));
    }

    private static String sum(PowerTransfer transfer, double todayUsCm, long volts) {
        return "For " + Plain.number(todayUsCm, 1) + " µS/cm today power transfer (fish "
                + Plain.number(transfer.fishConductivityUsCm(), 1) + " µS/cm; Kolz 1989, Miranda and Dolan 2003) gives "
                + volts + " V";
    }

    private static boolean usable(OptionalDouble conductivityUsCm) {
        return conductivityUsCm.orElse(0) > 0;
    }
}
