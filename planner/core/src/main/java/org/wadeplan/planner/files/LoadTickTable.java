package org.wadeplan.planner.files;

import org.wadeplan.planner.round.LoadTick;

/** {@code load_ticks.csv}: what was ticked as loaded. */
final class LoadTickTable {

    static final TableKind<LoadTick> KIND = TableKind.named("load_ticks", "date crew item")
            .required("date crew item ticked_at by")
            .optional("override_by override_reason")
            .mayAllBeAbsent()
            .makes(LoadTickTable::tick);

    private LoadTickTable() {}

    private static LoadTick tick(Row row) {
        return new LoadTick(
                row.date("date"),
                row.text("crew"),
                row.text("item"),
                row.instant("ticked_at"),
                row.text("by"),
                row.optionalText("override_by"),
                row.optionalText("override_reason"));
    }
}
