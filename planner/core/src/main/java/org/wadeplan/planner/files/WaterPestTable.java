package org.wadeplan.planner.files;

import org.wadeplan.planner.round.WaterPest;
import org.wadeplan.planner.round.WaterPest.PestStatus;

/** {@code water_pests.csv}: which pest is known, suspected or ruled out in which water. */
final class WaterPestTable {

    static final TableKind<WaterPest> KIND = TableKind.named("water_pests", "water pest")
            .required("water pest status as_of source")
            .makes(WaterPestTable::waterPest);

    private static final Words<PestStatus> STATUSES = Words.of(PestStatus.class);

    private WaterPestTable() {}

    private static WaterPest waterPest(Row row) {
        return new WaterPest(
                row.text("water"),
                row.text("pest"),
                row.word("status", STATUSES),
                row.date("as_of"),
                row.text("source"));
    }
}
