package org.wadeplan.planner.files;

import java.util.List;
import org.wadeplan.planner.round.DeconStepRule;

/** {@code decon_steps.csv}: the steps of cleaning around a treatment. */
final class DeconStepTable {

    static final TableKind<DeconStepRule> KIND = TableKind.named("decon_steps", "step when")
            .required("step label minutes when source")
            .optional("resource")
            .makes(DeconStepTable::step);

    private static final Words<String> STEPS =
            Words.plain("brush", "pick", "soak", "rinse", "hang", "dry", "check-rinse");
    /** What {@code when} may say besides the name of a treatment. */
    static final List<String> WHEN = List.of("always", "plant-fragments", "chemical", "heat", "same-water");

    private DeconStepTable() {}

    private static DeconStepRule step(Row row) {
        return new DeconStepRule(
                row.word("step", STEPS),
                row.text("label"),
                row.integer("minutes", Range.MINUTES_OF_DAY),
                row.text("when"),
                row.optionalText("resource"),
                row.text("source"));
    }
}
