package org.wadeplan.hazards.limits;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as people write them: no exponent, no trailing zeros, a point in every language. */
public final class PlainNumber {

    private static final int MOST_DECIMALS = 3;

    private PlainNumber() {}

    /** {@code 0.6}, {@code 25}, at most three decimals unless only zeros would be left; "not a number" where it is none. */
    public static String of(double value) {
        if (!Double.isFinite(value)) {
            return "not a number";
        }
        BigDecimal exact = new BigDecimal(Double.toString(value));
        BigDecimal thousandths = exact.setScale(Math.min(exact.scale(), MOST_DECIMALS), RoundingMode.HALF_UP);
        BigDecimal printed = thousandths.signum() == 0 ? exact : thousandths;
        return printed.stripTrailingZeros().toPlainString();
    }
}
