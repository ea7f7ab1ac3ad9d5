package org.wadeplan.planner.effort;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers for sentences: with a point, without exponent and without trailing zeros, in every locale. */
final class Plain {

    /** Far below a second or a minute; keeps a product such as 60 x 1.25 from being rounded up past itself. */
    private static final double ROUNDING_DUST = 1e-9;

    private Plain() {}

    static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** The next whole number up: a plan that is a minute or a pack short is worse than one too long. */
    static int ceil(double value) {
        return (int) Math.ceil(value - ROUNDING_DUST);
    }
}
