package org.wadeplan.planner.method;

import java.math.BigDecimal;

/** One value of a case that is put to a decision table. What is not known has no value at all: leave it out. */
public sealed interface CaseValue {

    /** A number, held exactly as it was written. */
    record Quantity(BigDecimal value) implements CaseValue {}

    record Text(String value) implements CaseValue {}

    record Truth(boolean value) implements CaseValue {}

    /** The number as its shortest decimal, which is how a person wrote it: 0.74 stays 0.74. */
    static CaseValue of(double value) {
        return new Quantity(BigDecimal.valueOf(value));
    }

    static CaseValue of(String value) {
        return new Text(value);
    }

    static CaseValue of(boolean value) {
        return new Truth(value);
    }

    default ValueType type() {
        if (this instanceof Quantity) {
            return ValueType.NUMBER;
        }
        return this instanceof Text ? ValueType.TEXT : ValueType.TRUTH;
    }

    /** For people: {@code 0.74}, {@code flowing}, {@code yes}. */
    default String words() {
        if (this instanceof Quantity number) {
            return plain(number.value());
        }
        if (this instanceof Text text) {
            return text.value();
        }
        return ((Truth) this).value() ? "yes" : "no";
    }

    /** Without exponent and without trailing zeros, in every locale with a point. */
    static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
