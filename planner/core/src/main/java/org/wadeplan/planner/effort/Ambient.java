package org.wadeplan.planner.effort;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.PastVisit;

/**
 * The ambient conductivity of an earlier visit, where it could be made out. A reading whose basis nobody wrote down is
 * never taken for either.
 *
 * @param words how, or why not
 */
record Ambient(OptionalDouble valueUsCm, String words) {

    static Ambient of(PastVisit visit, ConductivityRule rule) {
        if (visit.conductivityUsCm().isEmpty()) {
            return new Ambient(OptionalDouble.empty(), "The conductivity was not recorded then.");
        }
        double value = visit.conductivityUsCm().getAsDouble();
        String read = Plain.number(value, 1) + " µS/cm";
        if (visit.conductivityBasis().isEmpty()) {
            return new Ambient(
                    OptionalDouble.empty(), "Then " + read + ", and nobody wrote whether ambient or at 25 °C.");
        }
        return visit.conductivityBasis().get() == ConductivityBasis.AMBIENT
                ? new Ambient(OptionalDouble.of(value), "Then " + read + " ambient.")
                : fromSpecific(value, read, visit.waterTempC(), rule);
    }

    private static Ambient fromSpecific(
            double specificUsCm, String read, OptionalDouble waterTempC, ConductivityRule rule) {
        Optional<ConductivityConversion> conversion = ConductivityConversion.of(rule);
        if (waterTempC.isEmpty() || conversion.isEmpty()) {
            return new Ambient(
                    OptionalDouble.empty(), "Then " + read + " at 25 °C, which cannot be turned into ambient here.");
        }
        ConductivityConversion.Converted ambient = conversion.get().toAmbient(specificUsCm, waterTempC.getAsDouble());
        return new Ambient(
                OptionalDouble.of(ambient.valueUsCm()),
                "Then " + read + " at 25 °C, which is " + Plain.number(ambient.valueUsCm(), 0) + " µS/cm ambient at "
                        + Plain.number(waterTempC.getAsDouble(), 1) + " °C (" + ambient.rule() + ").");
    }
}
