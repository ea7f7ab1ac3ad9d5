package org.wadeplan.planner.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.VisitPart;

/** {@code past_visits.csv}: one row for each part of each earlier visit. */
final class PastVisitTable {

    static final TableKind<PastVisit> KIND = TableKind.named("past_visits", "site date")
            .required("site date method part")
            .optional("east_m north_m frequency_hz pulse_width_ms duty_pct voltage_v conductivity_us_cm "
                    + "conductivity_basis water_temp_c shock_s on_site_min width_m max_depth_m "
                    + "crew_size note")
            .later("fish_count")
            .mayAllBeAbsent()
            .makes(PastVisitTable::pastVisit);

    private static final Words<VisitPart> PARTS = Words.of(VisitPart.class, VisitPart::word);
    private static final Words<ConductivityBasis> BASES =
            Words.of(ConductivityBasis.class, basis -> basis == ConductivityBasis.AMBIENT ? "ambient" : "25C");
    private static final Range SHOCK_S = Range.of(0, 86_400, "s");
    private static final Range CREW = Range.of(1, 50, "people");
    static final Range FREQUENCY_HZ = Range.of(0, 1000, "Hz");
    static final Range PULSE_WIDTH_MS = Range.of(0, 100, "ms");
    static final Range VOLTAGE_V = Range.of(0, 1200, "V");

    private PastVisitTable() {}

    private static PastVisit pastVisit(Row row) {
        return new PastVisit(
                row.text("site"),
                row.date("date"),
                row.text("method"),
                row.word("part", PARTS),
                Points.optionalMetric(row, "east_m", "north_m"),
                settings(row),
                row.optionalDecimal("conductivity_us_cm", Range.CONDUCTIVITY_US_CM),
                row.optionalWord("conductivity_basis", BASES),
                row.optionalDecimal("water_temp_c", Range.WATER_TEMP_C),
                row.optionalInteger("shock_s", SHOCK_S),
                row.optionalInteger("on_site_min", Range.MINUTES_OF_DAY),
                row.optionalDecimal("width_m", Range.WIDTH_M),
                row.optionalDecimal("max_depth_m", Range.DEPTH_M),
                row.optionalInteger("crew_size", CREW),
                row.optionalInteger("fish_count", Range.COUNT),
                row.optionalText("note"));
    }

    /** All four or none: half a setting cannot be set again. */
    private static Optional<ElectricSettings> settings(Row row) {
        OptionalDouble frequencyHz = row.optionalDecimal("frequency_hz", FREQUENCY_HZ);
        OptionalDouble pulseWidthMs = row.optionalDecimal("pulse_width_ms", PULSE_WIDTH_MS);
        OptionalDouble dutyPct = row.optionalDecimal("duty_pct", Range.PERCENT);
        OptionalDouble voltageV = row.optionalDecimal("voltage_v", VOLTAGE_V);
        List<OptionalDouble> all = List.of(frequencyHz, pulseWidthMs, dutyPct, voltageV);
        if (all.stream().allMatch(OptionalDouble::isPresent)) {
            return Optional.of(new ElectricSettings(
                    frequencyHz.getAsDouble(),
                    pulseWidthMs.getAsDouble(),
                    dutyPct.getAsDouble(),
                    voltageV.getAsDouble()));
        }
        if (all.stream().anyMatch(OptionalDouble::isPresent)) {
            row.report(Problem.warning(
                    "settings-incomplete",
                    row.place(),
                    "some of the unit's settings are known and some are not, so they count as not known",
                    "frequency_hz, pulse_width_ms, duty_pct and voltage_v together, or none",
                    "look them up in the field sheet"));
        }
        return Optional.empty();
    }
}
