package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.VoltageCeiling;

/** Holds recorded settings against the round's ceilings. */
final class CeilingCheck {

    private CeilingCheck() {}

    /** What of last time's settings lies above the row for today's water. */
    static List<String> cautions(ElectricSettings last, VoltageCeiling row) {
        List<String> cautions = new ArrayList<>();
        above("frequency", last.frequencyHz(), row.frequencyMaxHz(), "Hz").ifPresent(cautions::add);
        above("pulse", last.pulseWidthMs(), row.pulseWidthMaxMs(), "ms").ifPresent(cautions::add);
        return cautions;
    }

    private static Optional<String> above(String what, double lastValue, OptionalDouble max, String unit) {
        if (max.isEmpty() || lastValue <= max.getAsDouble()) {
            return Optional.empty();
        }
        return Optional.of("Last time's " + what + " of " + Plain.number(lastValue, 2) + " " + unit
                + " is above the ceiling of " + Plain.number(max.getAsDouble(), 2) + " " + unit
                + " for today's water: stay below it, and note that catches then do not compare.");
    }

    /** A warning for each earlier visit whose voltage lies above the row for the water that it was used in. */
    static List<Problem> findings(List<PastVisit> visits, ConductivityRule rule, VoltageAdvice.Rules rules) {
        List<Problem> findings = new ArrayList<>();
        for (PastVisit visit : visits) {
            OptionalDouble then = Ambient.of(visit, rule).valueUsCm();
            if (visit.settings().isPresent() && then.isPresent()) {
                double usedV = visit.settings().get().voltageV();
                rules.ceiling(then.getAsDouble())
                        .filter(row -> usedV > row.voltageMaxV())
                        .ifPresent(row -> findings.add(above(visit, usedV, then.getAsDouble(), row)));
            }
        }
        return findings;
    }

    private static Problem above(PastVisit visit, double usedV, double thenUsCm, VoltageCeiling row) {
        return Problem.warning(
                "voltage-above-ceiling",
                SourcePlace.part("past_visits.csv", visit.site() + " " + visit.date())
                        .column("voltage_v"),
                Plain.number(usedV, 0) + " V was used in " + Plain.number(thenUsCm, 0)
                        + " µS/cm, above the ceiling of " + Plain.number(row.voltageMaxV(), 0) + " V from "
                        + Plain.number(row.conductivityMinUsCm(), 1) + " µS/cm in voltage_ceilings.csv",
                "a voltage up to the ceiling",
                "find out whether the record or the ceiling is wrong before anyone goes by either");
    }
}
