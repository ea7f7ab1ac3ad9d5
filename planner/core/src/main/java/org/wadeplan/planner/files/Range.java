package org.wadeplan.planner.files;

import java.math.BigDecimal;

/**
 * The numbers that a column may hold, both ends allowed. The ends catch slips of unit and of keying, not rare sites.
 *
 * @param unit for the sentence: {@code m}; empty where the number is a plain count
 */
record Range(double min, double max, String unit) {

    static final Range COUNT = new Range(0, 1_000_000, "");
    static final Range MINUTES_OF_DAY = new Range(0, 1440, "minutes");
    static final Range METRES_ON_GRID = new Range(-20_000_000, 20_000_000, "m");
    static final Range DEPTH_M = new Range(0, 6, "m");
    static final Range WIDTH_M = new Range(0, 500, "m");
    static final Range WATER_TEMP_C = new Range(-5, 40, "°C");
    static final Range CONDUCTIVITY_US_CM = new Range(0, 60_000, "µS/cm");
    static final Range PERCENT = new Range(0, 100, "%");

    static Range of(double min, double max, String unit) {
        return new Range(min, max, unit);
    }

    boolean holds(double value) {
        return value >= min && value <= max;
    }

    /** {@code a number from 0 to 6 m}. */
    String words(String what) {
        return what + " from " + plain(min) + " to " + plain(max) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
