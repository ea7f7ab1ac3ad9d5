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
        DeconRule rule = new DeconRule(
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
        checkWhole(row, rule);
        return rule;
    }

    /** A rule that asks for something says for what; one that is silently empty would protect nothing. */
    private static void checkWhole(Row row, DeconRule rule) {
        switch (rule.kind()) {
            case DRYING_ALONE_H, DRYING_AFTER_H, FREE_HOLDS_MONTHS -> {
                if (row.raw("value").isEmpty()) {
                    row.refuse("value", missing(row, "a number of hours, or of months for free-holds-months"));
                }
            }
            case AGENCY_TREATMENT, SUPERSEDED_TREATMENT -> {
                if (row.raw("treatment").isEmpty()) {
                    row.refuse("treatment", missing(row, "the name of the treatment that it is about"));
                }
            }
            case CONTROLLED_AREA -> {}
        }
    }

    private static Fault missing(Row row, String expected) {
        return new Fault(
                "rule-incomplete",
                "a rule of kind " + row.raw("kind") + " stands here without what it asks for",
                expected,
                "fill it in from its source, or delete the rule");
    }
}
