package org.wadeplan.planner.files;

import org.wadeplan.planner.round.PackSeconds;

/** {@code pack_seconds.csv}: how long a charged pack lasts, by conductivity. */
final class PackSecondsTable {

    static final TableKind<PackSeconds> KIND = TableKind.named("pack_seconds", "conductivity_max_us_cm")
            .required("conductivity_max_us_cm usable_s source")
            .makes(PackSecondsTable::packSeconds);

    private static final Range USABLE_S = Range.of(1, 86_400, "s");

    private PackSecondsTable() {}

    private static PackSeconds packSeconds(Row row) {
        return new PackSeconds(
                row.decimal("conductivity_max_us_cm", Range.CONDUCTIVITY_US_CM),
                row.integer("usable_s", USABLE_S),
                row.text("source"));
    }
}
