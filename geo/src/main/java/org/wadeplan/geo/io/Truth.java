package org.wadeplan.geo.io;

/** The answer of a filter about one feature. A value that is not known makes the answer unknown, not false. */
enum Truth {
    FALSE,
    UNKNOWN,
    TRUE;

    static Truth of(boolean answer) {
        return answer ? TRUE : FALSE;
    }

    Truth and(Truth other) {
        return compareTo(other) <= 0 ? this : other;
    }

    Truth or(Truth other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** Not known stays not known: that is why {@code NOT (depth < 100)} is not true where the depth is missing. */
    Truth not() {
        return switch (this) {
            case FALSE -> TRUE;
            case UNKNOWN -> UNKNOWN;
            case TRUE -> FALSE;
        };
    }
}
