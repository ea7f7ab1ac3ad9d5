package org.wadeplan.hazards.limits;

import java.math.BigDecimal;

/** Numbers as people write them: no exponent, no trailing zeros, a point in every language. */
public final class PlainNumber {

    private PlainNumber() {}

    /** {@code 0.6}, {@code 25}; "not a number" where it is none. */
    public static String of(double value) {
        if (!Double.isFinite(value)) {
            return "not a number";
        }
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
