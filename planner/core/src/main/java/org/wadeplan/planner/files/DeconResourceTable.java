package org.wadeplan.planner.files;

import org.wadeplan.planner.round.DeconResource;

/** {@code decon_resources.csv}: tubs, bays and rooms that kit sets queue for. */
final class DeconResourceTable {

    static final TableKind<DeconResource> KIND = TableKind.named("decon_resources", "resource")
            .required("resource label capacity_kit_sets")
            .optional("agent volume_l strength_g_l note")
            .makes(DeconResourceTable::resource);

    private static final Range CAPACITY = Range.of(0, 1000, "kit sets");

    private DeconResourceTable() {}

    private static DeconResource resource(Row row) {
        return new DeconResource(
                row.text("resource"),
                row.text("label"),
                row.integer("capacity_kit_sets", CAPACITY),
                row.optionalText("agent"),
                row.optionalDecimal("volume_l", Range.COUNT),
                row.optionalDecimal("strength_g_l", Range.COUNT),
                row.optionalText("note"));
    }
}
