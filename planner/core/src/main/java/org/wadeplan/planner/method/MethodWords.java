package org.wadeplan.planner.method;

import java.util.stream.Collectors;

/** Decisions in words, the same on the terminal, on paper and in the window. */
public final class MethodWords {

    private static final String NONE = "-";
    /** What {@link CellWords} calls a cell that every value passes; such a cell decided nothing. */
    private static final String ANYTHING = "any";

    private MethodWords() {}

    /** The rule's number, {@code override} where a person decided, or a dash where nothing was chosen. */
    public static String rule(MethodDecision decision) {
        return decision.overridden().isPresent()
                ? "override"
                : decision.chosen()
                        .map(chosen -> Integer.toString(chosen.rule()))
                        .orElse(NONE);
    }

    /** The method's id, or a dash where none was chosen. */
    public static String method(MethodDecision decision) {
        return decision.chosen().map(MethodOutcome.Chosen::method).orElse(NONE);
    }

    /** The outcome in few words: {@code EFISH by rule 5}, {@code no rule fits}, {@code rules 5 and 12 clash}. */
    public static String outcome(MethodDecision decision) {
        return decision.outcome()
                .fold(
                        chosen -> chosen.method() + " by " + ground(decision),
                        undecided -> "undecided: " + String.join(" or ", undecided.possibleMethods()),
                        noRule -> "no rule fits",
                        MethodWords::clash);
    }

    /** The readings that matched, or why no single rule did. */
    public static String why(MethodDecision decision) {
        if (decision.overridden().isPresent()) {
            return override(decision.overridden().get());
        }
        return decision.outcome()
                .fold(MethodWords::matched, MethodWords::undecided, MethodWords::noRule, MethodWords::clash);
    }

    /** {@code by override, because …; the table says …} */
    public static String override(MethodDecision.Overridden overridden) {
        return "by override, because: " + overridden.reason() + "; the table says: " + overridden.tableSays();
    }

    /** {@code rule 5}, or that a person decided and why. */
    public static String ground(MethodDecision decision) {
        return decision.overridden().map(MethodWords::override).orElseGet(() -> "rule " + rule(decision));
    }

    private static String matched(MethodOutcome.Chosen chosen) {
        return chosen.readings().stream()
                .filter(reading -> !reading.cell().equals(ANYTHING))
                .map(MethodWords::reading)
                .collect(Collectors.joining("; "));
    }

    /** {@code deepest point 0.48 m (at most 0.8 m)}; the value alone where it is all that the rule's cell holds. */
    private static String reading(MethodOutcome.Reading reading) {
        String value = reading.input() + " " + reading.value();
        return reading.value().equals(reading.cell()) ? value : value + " (" + reading.cell() + ")";
    }

    private static String undecided(MethodOutcome.Undecided undecided) {
        return "not known: " + String.join(", ", undecided.missing()) + "; still possible: "
                + String.join(", ", undecided.possibleMethods())
                + undecided.possibleTroubles().stream()
                        .map(trouble -> ", or " + trouble)
                        .collect(Collectors.joining())
                + measureFirst(undecided);
    }

    /** {@code ; measure clarity on arrival: that settles it} */
    private static String measureFirst(MethodOutcome.Undecided undecided) {
        if (undecided.measureFirst().isEmpty()) {
            return "";
        }
        String inputs = undecided.measureFirst().stream()
                .map(input -> SiteInput.named(input).map(SiteInput::words).orElse(input))
                .collect(Collectors.joining(" and "));
        return "; measure " + inputs + " on arrival: "
                + (undecided.settles()
                        ? "that settles it, whatever the reading"
                        : "that settles it for most readings, not for all");
    }

    private static String noRule(MethodOutcome.NoRule noRule) {
        return "no rule matches; "
                + noRule.failures().stream()
                        .map(cell -> "rule " + cell.rule() + " fails at " + cell.input() + " " + cell.value()
                                + ", not in " + cell.cell())
                        .collect(Collectors.joining("; "));
    }

    private static String clash(MethodOutcome.Clash clash) {
        return "rules " + clash.rules().stream().map(String::valueOf).collect(Collectors.joining(" and "))
                + " match at once, with " + String.join(" and ", clash.methods());
    }
}
