package org.wadeplan.planner.files;

import org.wadeplan.planner.round.DeconRule;

/** {@code decon_rules.csv}: rules of places about cleaning, with the days on which they are in force. */
final class DeconRuleTable {

    static final TableKind<DeconRule> KIND = TableKind.named("decon_rules", "rule")
            .required("rule kind text source")
            .optional("value pests waters month_from month_until valid_from valid_until jurisdiction treatment")
            .mayAllBeAbsent()
            .makes(DeconRuleTable::rule);

    private static final Words<DeconRule.Kind> KINDS = Words.of(DeconRule.Kind.class);
    private static final Range VALUE = Range.of(0, 100_000, "");
    private static final Range MONTH = Range.of(1, 12, "");

    private DeconRuleTable() {}

    private static DeconRule rule(Row row) {
        return new DeconRule(
                row.text("rule"),
                row.word("kind", KINDS),
                row.optionalDecimal("value", VALUE),
                row.optionalList("pests"),
                row.optionalList("waters"),
                row.optionalInteger("month_from", MONTH),
                row.optionalInteger("month_until", MONTH),
                Validities.of(row),
                row.text("text"),
                row.optionalText("treatment"),
                row.text("source"));
    }
}
