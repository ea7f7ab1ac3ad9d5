package org.wadeplan.planner.files;

import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** {@code treatments.csv}: what each treatment does to each pest on each material. */
final class TreatmentTable {

    static final TableKind<Treatment> KIND = TableKind.named("treatments", "treatment pest material")
            .required("treatment pest material agent mode contact_min drying_h pick_first grade source")
            .optional("strength strength_basis temp_c")
            .later("stage valid_from valid_until jurisdiction")
            .makes(TreatmentTable::treatment);

    private static final Words<Material> MATERIALS = Words.of(Material.class);
    private static final Words<TreatmentMode> MODES = Words.of(TreatmentMode.class);
    private static final Words<EvidenceGrade> GRADES = Words.of(EvidenceGrade.class);
    static final Range STRENGTH = Range.of(0, 1_000_000, "");
    static final Range TEMP_C = Range.of(-200, 120, "°C");
    private static final Range CONTACT_MIN = Range.of(0, 100_000, "minutes");
    private static final Range DRYING_H = Range.of(0, 10_000, "hours");

    private TreatmentTable() {}

    private static Treatment treatment(Row row) {
        Treatment treatment = new Treatment(
                row.text("treatment"),
                row.text("pest"),
                row.word("material", MATERIALS),
                row.text("agent"),
                row.optionalDecimal("strength", STRENGTH),
                row.optionalText("strength_basis"),
                row.optionalDecimal("temp_c", TEMP_C),
                row.word("mode", MODES),
                row.decimal("contact_min", CONTACT_MIN),
                row.decimal("drying_h", DRYING_H),
                row.flag("pick_first"),
                row.word("grade", GRADES),
                row.text("source"),
                row.optionalText("stage"),
                Validities.of(row));
        checkBasis(row);
        return treatment;
    }

    /** Whether a row is of grade X: tested and not effective. */
    static boolean refuses(Row row) {
        return row.raw("grade").equalsIgnoreCase("x");
    }

    /** A strength says what it is a strength of. */
    static void checkBasis(Row row) {
        if (!row.raw("strength").isEmpty() && row.raw("strength_basis").isEmpty()) {
            row.refuse(
                    "strength_basis",
                    new Fault(
                            "strength-basis-missing",
                            "a strength stands here and nothing says what of: of product or of active agent",
                            "a basis such as g/L product or mg/L active",
                            "look it up in the source; the two can differ several times over"));
        }
    }
}
