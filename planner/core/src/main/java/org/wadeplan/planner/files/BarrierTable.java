package org.wadeplan.planner.files;

import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.planner.round.Barrier;

/** {@code barriers.csv}: weirs, culverts, fords and bridges. */
final class BarrierTable {

    static final TableKind<Barrier> KIND = TableKind.named("barriers", "barrier")
            .required("barrier stream kind east_m north_m")
            .optional("note")
            .mayAllBeAbsent()
            .makes(BarrierTable::barrier);

    private BarrierTable() {}

    private static Barrier barrier(Row row) {
        return new Barrier(
                row.text("barrier"),
                row.text("stream"),
                row.text("kind"),
                new MetricPoint(
                        row.decimal("east_m", Range.METRES_ON_GRID), row.decimal("north_m", Range.METRES_ON_GRID)),
                row.optionalText("note"));
    }
}
