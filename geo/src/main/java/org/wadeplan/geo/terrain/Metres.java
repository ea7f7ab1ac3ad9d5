package org.wadeplan.geo.terrain;

import java.math.BigDecimal;
import java.math.MathContext;

/** Lengths as people write them. */
final class Metres {

    private Metres() {}

    /** At most three digits that count, no trailing zeros: {@code 0.01}, {@code 1}, {@code 92.7}, {@code 500}. */
    static String words(double metres) {
        return BigDecimal.valueOf(metres)
                .round(new MathContext(metres >= 100 ? 4 : 3))
                .stripTrailingZeros()
                .toPlainString();
    }
}
