package org.wadeplan.planner.files;

import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.TreatmentMode;

/** {@code cleanings.csv}: treatments as they were really done, typed in from the signed sheets. */
final class CleaningTable {

    static final TableKind<CleaningRecord> KIND = TableKind.named("cleanings", "cleaning kit_set")
            .required("cleaning kit_set treatment mode started_at ended_at picked rinsed operator")
            .optional("bath temp_start_c temp_end_c strength_start strength_end dry_at checker override_by"
                    + " override_reason note")
            .mayAllBeAbsent()
            .makes(CleaningTable::cleaning);

    private static final Words<TreatmentMode> MODES = Words.of(TreatmentMode.class);

    private CleaningTable() {}

    private static CleaningRecord cleaning(Row row) {
        CleaningRecord cleaning = new CleaningRecord(
                row.text("cleaning"),
                row.text("kit_set"),
                row.text("treatment"),
                row.word("mode", MODES),
                row.optionalText("bath"),
                row.instant("started_at"),
                row.instant("ended_at"),
                row.optionalDecimal("temp_start_c", TreatmentTable.TEMP_C),
                row.optionalDecimal("temp_end_c", TreatmentTable.TEMP_C),
                row.optionalDecimal("strength_start", TreatmentTable.STRENGTH),
                row.optionalDecimal("strength_end", TreatmentTable.STRENGTH),
                row.flag("picked"),
                row.flag("rinsed"),
                row.optionalInstant("dry_at"),
                row.text("operator"),
                row.optionalText("checker"),
                row.optionalText("override_by"),
                row.optionalText("override_reason"),
                row.optionalText("note"));
        checkTimes(row, cleaning);
        checkOverride(row, cleaning);
        return cleaning;
    }

    private static void checkTimes(Row row, CleaningRecord cleaning) {
        if (row.whole() && !cleaning.endedAt().isAfter(cleaning.startedAt())) {
            row.refuse(
                    "ended_at",
                    new Fault(
                            "ends-before-start",
                            "the cleaning ended at " + cleaning.endedAt() + " and started at " + cleaning.startedAt(),
                            "a time after started_at",
                            "mend the one or the other from the sheet"));
        }
    }

    private static void checkOverride(Row row, CleaningRecord cleaning) {
        boolean named = cleaning.overrideBy().isPresent();
        if (named != cleaning.overrideReason().isPresent()) {
            row.refuse(
                    named ? "override_reason" : "override_by",
                    new Fault(
                            "half-an-override",
                            "an override stands here with its " + (named ? "name" : "reason") + " alone",
                            "both the name of who let the set go and why, or neither",
                            "fill in the other, or clear both"));
        }
    }
}
