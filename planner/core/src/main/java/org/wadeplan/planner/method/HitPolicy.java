package org.wadeplan.planner.method;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a decision table does where several rules match, in the words of DMN. Those that give one answer per case are
 * evaluated; the rest are refused by name, because a site has one method.
 */
public enum HitPolicy {
    /** At most one rule may match. The standard's default. */
    UNIQUE("UNIQUE"),
    /** Several may match if they say the same. */
    ANY("ANY"),
    /** The first that matches counts, in the order of the table. */
    FIRST("FIRST");

    private final String word;

    HitPolicy(String word) {
        this.word = word;
    }

    /** As the standard writes it. */
    public String word() {
        return word;
    }

    /** The policy of that name; empty for one that is not evaluated. */
    public static Optional<HitPolicy> named(String word) {
        return Arrays.stream(values())
                .filter(policy -> policy.word.equals(word.strip()))
                .findFirst();
    }
}
