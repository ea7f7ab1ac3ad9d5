package org.wadeplan.planner.method;

import java.util.Optional;

/** What kind of value an input or output of a decision table holds. */
public enum ValueType {
    NUMBER("number"),
    TEXT("string"),
    TRUTH("boolean");

    private final String word;

    ValueType(String word) {
        this.word = word;
    }

    /** As DMN writes it. */
    public String word() {
        return word;
    }

    /** The type that a {@code typeRef} names: the standard's own words, and the number words that modellers write. */
    public static Optional<ValueType> named(String typeRef) {
        String bare = typeRef.strip();
        return switch (bare.substring(bare.indexOf(':') + 1)) {
            case "number", "integer", "long", "double", "decimal" -> Optional.of(NUMBER);
            case "string" -> Optional.of(TEXT);
            case "boolean" -> Optional.of(TRUTH);
            default -> Optional.empty();
        };
    }
}
