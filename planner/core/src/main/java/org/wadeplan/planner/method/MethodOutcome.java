package org.wadeplan.planner.method;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;

/** What came of asking a decision table about one site. No answer is an answer, with its reasons. */
public sealed interface MethodOutcome {

    /**
     * The method is settled: one rule matched, or several that could match name the same method.
     *
     * @param rule its number, from 1 as printed
     * @param method the method it names
     * @param crewMin the smallest crew that the rule asks for; empty where it names none
     * @param readings each input's value beside the rule's cell
     * @param possibleRules the rule alone where everything that it asks is known; several where something is not known and
     *     every rule that could still match names the same method. Then {@code rule} is the first of them and
     *     {@code crewMin} the largest crew that one of them asks for
     * @param unknown inputs that are not known although a possible rule asks about them: the method holds whatever they are
     */
    record Chosen(
            int rule,
            String ruleId,
            String method,
            OptionalInt crewMin,
            List<Reading> readings,
            List<Integer> possibleRules,
            List<String> unknown)
            implements MethodOutcome {

        /** Everything that the rule asks is known. */
        public Chosen(int rule, String ruleId, String method, OptionalInt crewMin, List<Reading> readings) {
            this(rule, ruleId, method, crewMin, readings, List.of(rule), List.of());
        }
    }

    /**
     * Something that matters is not known.
     *
     * @param missing inputs that can change the outcome, by name
     * @param possibleRules rules that could still match
     * @param possibleMethods methods that could still come out, in table order
     * @param possibleTroubles what else could come out: {@code no rule fits}, {@code rules 5 and 12 clash}
     * @param measureFirst the one or two inputs to measure on arrival
     * @param settles whether those settle it whatever the readings and whatever else stays unknown; else they settle it in
     *     more cases than any other two
     */
    record Undecided(
            List<String> missing,
            List<Integer> possibleRules,
            List<String> possibleMethods,
            List<String> possibleTroubles,
            List<String> measureFirst,
            boolean settles)
            implements MethodOutcome {

        /** Without advice on what to measure. */
        public Undecided(
                List<String> missing,
                List<Integer> possibleRules,
                List<String> possibleMethods,
                List<String> possibleTroubles) {
            this(missing, possibleRules, possibleMethods, possibleTroubles, List.of(), false);
        }
    }

    /** No rule matched: for each rule the first cell that failed. */
    record NoRule(List<FailedCell> failures) implements MethodOutcome {}

    /** More than one rule matched where the hit policy allows one. */
    record Clash(List<Integer> rules, List<String> methods) implements MethodOutcome {}

    /** One input's value beside a rule's cell, both in words. */
    record Reading(String input, String value, String cell) {}

    /** The first cell of a rule that a case fails. */
    record FailedCell(int rule, String input, String value, String cell) {}

    default <R> R fold(
            Function<Chosen, R> chosen,
            Function<Undecided, R> undecided,
            Function<NoRule, R> noRule,
            Function<Clash, R> clash) {
        if (this instanceof Chosen it) {
            return chosen.apply(it);
        }
        if (this instanceof Undecided it) {
            return undecided.apply(it);
        }
        if (this instanceof NoRule it) {
            return noRule.apply(it);
        }
        return clash.apply((Clash) this);
    }
}
