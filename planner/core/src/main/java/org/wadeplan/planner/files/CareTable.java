package org.wadeplan.planner.files;

import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.planner.round.CarePlace;

/** {@code care.csv}: places of emergency care. */
final class CareTable {

    static final TableKind<CarePlace> KIND = TableKind.named("care", "care")
            .required("care name east_m north_m")
            .optional("open note")
            .mayAllBeAbsent()
            .makes(CareTable::place);

    private CareTable() {}

    private static CarePlace place(Row row) {
        return new CarePlace(
                row.text("care"),
                row.text("name"),
                new MetricPoint(
                        row.decimal("east_m", Range.METRES_ON_GRID), row.decimal("north_m", Range.METRES_ON_GRID)),
                row.optionalText("open"),
                row.optionalText("note"));
    }
}
