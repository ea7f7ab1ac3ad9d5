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
        if (row.raw("override_by").isEmpty() != row.raw("override_reason").isEmpty()) {
            row.refuse(
                    row.raw("override_by").isEmpty() ? "override_by" : "override_reason",
                    new Fault(
                            "half-an-override",
                            "one of override_by and override_reason stands here without the other",
                            "both where somebody let the item go, neither otherwise",
                            "fill in the other, or clear both"));
        }
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
