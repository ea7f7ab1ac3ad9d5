package org.wadeplan.planner.method;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a decision table does where several rules match, in the words of DMN. COLLECT is refused by name: it lists answers
 * in no order, or adds them up, and a site has one method.
 */
public enum HitPolicy {
    /** At most one rule may match. The standard's default. */
    UNIQUE("UNIQUE"),
    /** Several may match if they say the same. */
    ANY("ANY"),
    /** The first that matches counts, in the order of the table. */
    FIRST("FIRST"),
    /** Of those that match, the one whose output stands first in the list of output values. */
    PRIORITY("PRIORITY"),
    /** All that match, in the order of the table. */
    RULE_ORDER("RULE ORDER"),
    /** All that match, in the order of the list of output values. */
    OUTPUT_ORDER("OUTPUT ORDER");

    private final String word;

    HitPolicy(String word) {
        this.word = word;
    }

    /** As the standard writes it. */
    public String word() {
        return word;
    }

    /** Whether one rule answers by its place before the others, so that rules may overlap. */
    public boolean ranks() {
        return this == FIRST || this == PRIORITY;
    }

    /** Whether all matching rules answer, one after the other. */
    public boolean lists() {
        return this == RULE_ORDER || this == OUTPUT_ORDER;
    }

    /** Whether it goes by the order of the output values. */
    public boolean byOutputValues() {
        return this == PRIORITY || this == OUTPUT_ORDER;
    }

    /** Every policy that is evaluated, for messages. */
    static String allWords() {
        return Arrays.stream(values()).map(HitPolicy::word).collect(Collectors.joining(", "));
    }

    /** The policy of that name or, as tables on paper have it, that first letter; empty for one that is not evaluated. */
    public static Optional<HitPolicy> named(String word) {
        return Arrays.stream(values())
                .filter(policy -> policy.word.equals(word.strip())
                        || policy.word.substring(0, 1).equals(word.strip()))
                .findFirst();
    }
}
