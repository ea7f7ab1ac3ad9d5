package org.wadeplan.planner.files;

import java.util.OptionalDouble;
import org.wadeplan.planner.round.VoltageCeiling;

/** {@code voltage_ceilings.csv}: how far an operator may go, by ambient conductivity. */
final class VoltageCeilingTable {

    static final TableKind<VoltageCeiling> KIND = TableKind.named("voltage_ceilings", "conductivity_min_us_cm")
            .required("conductivity_min_us_cm voltage_max_v source")
            .optional("voltage_start_v frequency_max_hz pulse_width_max_ms")
            .mayAllBeAbsent()
            .makes(VoltageCeilingTable::voltageCeiling);

    private VoltageCeilingTable() {}

    private static VoltageCeiling voltageCeiling(Row row) {
        double voltageMaxV = row.decimal("voltage_max_v", PastVisitTable.VOLTAGE_V);
        OptionalDouble voltageStartV = row.optionalDecimal("voltage_start_v", PastVisitTable.VOLTAGE_V);
        if (row.whole() && voltageStartV.orElse(0) > voltageMaxV) {
            row.refuse(
                    "voltage_start_v",
                    new Fault(
                            "start-above-ceiling",
                            NumberCell.quoted(row.raw("voltage_start_v")) + " is above the row's own ceiling, "
                                    + row.raw("voltage_max_v"),
                            "a voltage up to voltage_max_v",
                            "check both; they may be swapped"));
        }
        return new VoltageCeiling(
                row.decimal("conductivity_min_us_cm", Range.CONDUCTIVITY_US_CM),
                voltageMaxV,
                voltageStartV,
                row.optionalDecimal("frequency_max_hz", PastVisitTable.FREQUENCY_HZ),
                row.optionalDecimal("pulse_width_max_ms", PastVisitTable.PULSE_WIDTH_MS),
                row.text("source"));
    }
}
