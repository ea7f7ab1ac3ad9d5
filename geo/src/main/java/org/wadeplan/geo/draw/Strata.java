package org.wadeplan.geo.draw;

import java.util.Comparator;

/** The order of strata: numbers by size before names by letter. */
final class Strata {

    static final Comparator<String> IN_ORDER = Comparator.comparing((String name) -> !isNumber(name))
            .thenComparingLong(name -> isNumber(name) ? Long.parseLong(name) : 0)
            .thenComparing(Comparator.naturalOrder());

    private Strata() {}

    private static boolean isNumber(String name) {
        return name.matches("[0-9]{1,9}");
    }
}
