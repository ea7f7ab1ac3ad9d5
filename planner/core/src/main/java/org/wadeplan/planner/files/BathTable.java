package org.wadeplan.planner.files;

import org.wadeplan.planner.round.BathRecord;

/** {@code baths.csv}: baths that somebody made up. */
final class BathTable {

    static final TableKind<BathRecord> KIND = TableKind.named("baths", "bath")
            .required("bath resource agent made_at volume_l")
            .optional("strength strength_basis measured_at measured_strength lot discarded_at")
            .mayAllBeAbsent()
            .makes(BathTable::bath);

    private static final Range VOLUME_L = Range.of(0.1, 100_000, "L");

    private BathTable() {}

    private static BathRecord bath(Row row) {
        BathRecord bath = new BathRecord(
                row.text("bath"),
                row.text("resource"),
                row.text("agent"),
                row.instant("made_at"),
                row.decimal("volume_l", VOLUME_L),
                row.optionalDecimal("strength", TreatmentTable.STRENGTH),
                row.optionalText("strength_basis"),
                row.optionalInstant("measured_at"),
                row.optionalDecimal("measured_strength", TreatmentTable.STRENGTH),
                row.optionalText("lot"),
                row.optionalInstant("discarded_at"));
        TreatmentTable.checkBasis(row);
        return bath;
    }
}
