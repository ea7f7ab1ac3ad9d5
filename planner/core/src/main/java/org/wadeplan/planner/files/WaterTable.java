package org.wadeplan.planner.files;

import org.wadeplan.planner.round.Water;

/** {@code waters.csv}: stretches of stream that count as one water each. */
final class WaterTable {

    static final TableKind<Water> KIND = TableKind.named("waters", "water")
            .required("water name stream from_mouth_min_m from_mouth_max_m rank protected tidal")
            .optional("tide_place note")
            .makes(WaterTable::water);

    private static final Range ALONG_M = Range.of(0, 10_000_000, "m");
    private static final Range RANK = Range.of(1, 99, "");

    private WaterTable() {}

    private static Water water(Row row) {
        Water water = new Water(
                row.text("water"),
                row.text("name"),
                row.text("stream"),
                row.decimal("from_mouth_min_m", ALONG_M),
                row.decimal("from_mouth_max_m", ALONG_M),
                row.integer("rank", RANK),
                row.flag("protected"),
                row.flag("tidal"),
                row.optionalText("tide_place"),
                row.optionalText("note"));
        if (row.whole() && water.fromMouthMaxM() <= water.fromMouthMinM()) {
            row.refuse(
                    "from_mouth_max_m",
                    new Fault(
                            "range-reversed",
                            "the upper end lies below the lower end",
                            "more than from_mouth_min_m",
                            "swap the two"));
        }
        if (row.whole() && water.tidal() && water.tidePlace().isEmpty()) {
            row.refuse(
                    "tide_place",
                    new Fault(
                            "tide-place-missing",
                            "the water is tidal and no tide place is named",
                            "a place of tides.csv",
                            "name it: without it nobody knows when the water can be waded"));
        }
        return water;
    }
}
