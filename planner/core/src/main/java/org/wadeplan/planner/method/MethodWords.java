package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Round;

/** Decisions in words, the same on the terminal, on paper and in the window. */
public final class MethodWords {

    private static final String NONE = "-";

    private MethodWords() {}

    /** The rule's number, or a dash where none was chosen. */
    public static String rule(MethodDecision decision) {
        return decision.chosen().map(chosen -> Integer.toString(chosen.rule())).orElse(NONE);
    }

    /** The method's id, or a dash where none was chosen. */
    public static String method(MethodDecision decision) {
        return decision.chosen().map(MethodOutcome.Chosen::method).orElse(NONE);
    }

    /** The readings that matched, or why no single rule did. */
    public static String why(MethodDecision decision) {
        return decision.outcome()
                .fold(MethodWords::matched, MethodWords::undecided, MethodWords::noRule, MethodWords::clash);
    }

    /** An error for every site without a single answer: such a site is not planned. */
    public static List<Problem> findings(List<MethodDecision> decisions, Round round) {
        List<Problem> findings = new ArrayList<>();
        for (MethodDecision decision : decisions) {
            code(decision.outcome())
                    .ifPresent(code -> findings.add(Problem.error(
                            code,
                            SourcePlace.part("sites.csv", decision.site()),
                            decision.site() + " gets no method from " + decision.table() + " of "
                                    + round.header().id() + ": " + why(decision),
                            "exactly one rule that matches",
                            remedy(decision.outcome()))));
        }
        return findings;
    }

    private static Optional<String> code(MethodOutcome outcome) {
        return outcome.fold(
                chosen -> Optional.empty(),
                undecided -> Optional.of("method-undecided"),
                noRule -> Optional.of("method-no-rule"),
                clash -> Optional.of("method-clash"));
    }

    private static String remedy(MethodOutcome outcome) {
        return outcome.fold(
                chosen -> "",
                undecided -> "measure or estimate " + String.join(" and ", undecided.missing())
                        + " and write it into sites.csv",
                noRule -> "add a rule for this case, or correct the site's conditions",
                clash -> "narrow one of the rules, so that each case has one");
    }

    private static String matched(MethodOutcome.Chosen chosen) {
        return chosen.readings().stream()
                .filter(reading -> !reading.cell().equals("-"))
                .map(reading -> reading.input() + " " + reading.value() + " in " + reading.cell())
                .collect(Collectors.joining("; "));
    }

    private static String undecided(MethodOutcome.Undecided undecided) {
        return "not known: " + String.join(", ", undecided.missing()) + "; still possible: "
                + String.join(", ", undecided.possibleMethods());
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
