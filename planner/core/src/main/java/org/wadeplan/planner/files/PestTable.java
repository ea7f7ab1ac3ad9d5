package org.wadeplan.planner.files;

import org.wadeplan.planner.round.Pest;

/** {@code pests.csv}: organisms that must not be moved. */
final class PestTable {

    static final TableKind<Pest> KIND = TableKind.named("pests", "pest")
            .required("pest name severity")
            .optional("note")
            .later("stages")
            .makes(PestTable::pest);

    private static final Range SEVERITY = Range.of(1, 5, "");

    private PestTable() {}

    private static Pest pest(Row row) {
        return new Pest(
                row.text("pest"),
                row.text("name"),
                row.integer("severity", SEVERITY),
                row.optionalText("note"),
                row.optionalList("stages"));
    }
}
