package org.wadeplan.planner.files;

import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.VisitPart;

/** {@code agreed_week.csv}: the week as people have agreed it, visits and cleanings. */
final class AgreedTable {

    static final TableKind<AgreedTask> KIND = TableKind.named("agreed_week", "date crew start")
            .required("date crew start kit_sets")
            .optional("site part note")
            .mayAllBeAbsent()
            .makes(AgreedTable::task);

    private static final Words<VisitPart> PARTS = Words.of(VisitPart.class);

    private AgreedTable() {}

    private static AgreedTask task(Row row) {
        AgreedTask task = new AgreedTask(
                row.date("date"),
                row.text("crew"),
                row.instant("start"),
                row.optionalText("site"),
                row.optionalWord("part", PARTS),
                row.list("kit_sets"),
                row.optionalText("note"));
        if (row.raw("site").isEmpty() != row.raw("part").isEmpty()) {
            row.refuse(
                    row.raw("site").isEmpty() ? "site" : "part",
                    new Fault(
                            "half-a-visit",
                            "one of site and part stands here without the other",
                            "both for a visit, neither for a cleaning",
                            "fill in the other, or clear both"));
        }
        return task;
    }
}
