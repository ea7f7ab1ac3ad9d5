package org.wadeplan.planner.files;

import org.wadeplan.planner.round.LowWater;

/** {@code tides.csv}: low waters. */
final class TideTable {

    static final TableKind<LowWater> KIND = TableKind.named("tides", "place")
            .required("place low_water source")
            .mayAllBeAbsent()
            .makes(TideTable::lowWater);

    private TideTable() {}

    private static LowWater lowWater(Row row) {
        return new LowWater(row.text("place"), row.instant("low_water"), row.text("source"));
    }
}
