package org.wadeplan.planner.files;

import org.wadeplan.planner.round.DepthPoint;

/** {@code depths.csv}: depths along the reaches and a little beyond their ends. */
final class DepthTable {

    static final TableKind<DepthPoint> KIND = TableKind.named("depths", "site from_start_m")
            .required("site from_start_m depth_m source")
            .mayAllBeAbsent()
            .makes(DepthTable::point);

    private static final Range FROM_START_M = Range.of(-10_000, 10_000, "m");

    private DepthTable() {}

    private static DepthPoint point(Row row) {
        row.text("source");
        return new DepthPoint(
                row.text("site"), row.decimal("from_start_m", FROM_START_M), row.decimal("depth_m", Range.DEPTH_M));
    }
}
