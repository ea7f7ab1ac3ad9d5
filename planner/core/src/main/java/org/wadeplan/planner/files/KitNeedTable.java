package org.wadeplan.planner.files;

import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.KitPer;
import org.wadeplan.planner.round.VisitPart;

/** {@code kit_needs.csv}: what each part of a visit needs. */
final class KitNeedTable {

    static final TableKind<KitNeed> KIND = TableKind.named("kit_needs", "method part kind")
            .required("method part kind quantity per spare container clean source")
            .optional("certificate")
            .makes(KitNeedTable::kitNeed);

    private static final Words<VisitPart> PARTS = Words.of(VisitPart.class, VisitPart::word);
    private static final Words<KitPer> PER = Words.of(KitPer.class);

    private KitNeedTable() {}

    private static KitNeed kitNeed(Row row) {
        return new KitNeed(
                row.text("method"),
                row.word("part", PARTS),
                row.text("kind"),
                row.decimal("quantity", Range.COUNT),
                row.word("per", PER),
                row.decimal("spare", Range.COUNT),
                row.text("container"),
                row.flag("clean"),
                row.optionalText("certificate"),
                row.text("source"));
    }
}
