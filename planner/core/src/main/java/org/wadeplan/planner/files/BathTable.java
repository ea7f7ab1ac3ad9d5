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
        checkReading(row, bath);
        checkTimes(row, bath);
        return bath;
    }

    private static void checkReading(Row row, BathRecord bath) {
        if (bath.measuredStrength().isPresent() && bath.strengthBasis().isEmpty()) {
            row.refuse(
                    "strength_basis",
                    new Fault(
                            "reading-basis-missing",
                            "a reading stands here and nothing says what of: of product or of active agent",
                            "a basis such as g/L product or mg/L active, for strength and reading alike",
                            "look at the strip's or the meter's label"));
        }
    }

    private static void checkTimes(Row row, BathRecord bath) {
        bath.measuredAt()
                .filter(at -> at.isBefore(bath.madeAt()))
                .ifPresent(at -> row.refuse(
                        "measured_at",
                        new Fault(
                                "measured-before-made",
                                "the bath was measured at " + at + " and made only at " + bath.madeAt(),
                                "a reading at or after made_at",
                                "mend the earlier or the later time from the sheet")));
        bath.discardedAt()
                .filter(at -> at.isBefore(bath.madeAt()))
                .ifPresent(at -> row.refuse(
                        "discarded_at",
                        new Fault(
                                "discarded-before-made",
                                "the bath was tipped out at " + at + " and made only at " + bath.madeAt(),
                                "a time at or after made_at",
                                "mend the earlier or the later time from the sheet")));
    }
}
