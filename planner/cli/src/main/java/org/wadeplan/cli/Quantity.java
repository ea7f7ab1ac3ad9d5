package org.wadeplan.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A quantity as people write it: no trailing zeros, at most two decimals. */
final class Quantity {

    private Quantity() {}

    static String words(double quantity, String unit) {
        String number = BigDecimal.valueOf(quantity)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return unit.isBlank() ? number : number + " " + unit;
    }
}
