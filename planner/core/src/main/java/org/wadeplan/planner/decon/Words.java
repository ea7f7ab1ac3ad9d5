package org.wadeplan.planner.decon;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Numbers and lists as a sentence wants them. */
public final class Words {

    private Words() {}

    /** At most two decimals, none where it is whole. */
    public static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** {@code a}, {@code a and b}, {@code a, b and c}; {@code none} where there are none. */
    public static String list(Collection<String> words) {
        List<String> all = List.copyOf(words);
        if (all.isEmpty()) {
            return "none";
        }
        if (all.size() == 1) {
            return all.get(0);
        }
        return String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
    }

    public static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
