package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Optional;

/**
 * A stretch of numbers that is never empty.
 *
 * @param low lower end; empty where it goes on for ever
 * @param lowIncluded whether the lower end belongs to it; false where there is none
 * @param high upper end; empty where it goes on for ever
 * @param highIncluded whether the upper end belongs to it; false where there is none
 */
public record Interval(Optional<BigDecimal> low, boolean lowIncluded, Optional<BigDecimal> high, boolean highIncluded) {

    /** By lower end: the one that starts first comes first, an included end before an excluded one. */
    static final Comparator<Interval> BY_LOW = Interval::compareLow;

    public Interval {
        // One form per number, so that two equal intervals are equal records.
        low = low.map(Interval::canonical);
        high = high.map(Interval::canonical);
        if ((low.isEmpty() && lowIncluded) || (high.isEmpty() && highIncluded)) {
            throw new IllegalArgumentException("An end that is not there cannot be included");
        }
        if (isEmpty(low, lowIncluded, high, highIncluded)) {
            throw new IllegalArgumentException("No number lies between " + low + " and " + high);
        }
    }

    public static Interval everything() {
        return new Interval(Optional.empty(), false, Optional.empty(), false);
    }

    public static Interval exactly(BigDecimal value) {
        return new Interval(Optional.of(value), true, Optional.of(value), true);
    }

    public static Interval atLeast(BigDecimal low) {
        return new Interval(Optional.of(low), true, Optional.empty(), false);
    }

    public static Interval above(BigDecimal low) {
        return new Interval(Optional.of(low), false, Optional.empty(), false);
    }

    public static Interval atMost(BigDecimal high) {
        return new Interval(Optional.empty(), false, Optional.of(high), true);
    }

    public static Interval below(BigDecimal high) {
        return new Interval(Optional.empty(), false, Optional.of(high), false);
    }

    /** Whether no number lies between two ends. */
    static boolean isEmpty(
            Optional<BigDecimal> low, boolean lowIncluded, Optional<BigDecimal> high, boolean highIncluded) {
        if (low.isEmpty() || high.isEmpty()) {
            return false;
        }
        int order = low.get().compareTo(high.get());
        return order > 0 || (order == 0 && !(lowIncluded && highIncluded));
    }

    public boolean contains(BigDecimal value) {
        return low.map(end -> value.compareTo(end))
                        .map(order -> order > 0 || (order == 0 && lowIncluded))
                        .orElse(true)
                && high.map(end -> value.compareTo(end))
                        .map(order -> order < 0 || (order == 0 && highIncluded))
                        .orElse(true);
    }

    /** What lies in both; empty where nothing does. */
    public Optional<Interval> intersect(Interval other) {
        Interval later = compareLow(this, other) >= 0 ? this : other;
        Interval sooner = compareHigh(this, other) <= 0 ? this : other;
        return isEmpty(later.low, later.lowIncluded, sooner.high, sooner.highIncluded)
                ? Optional.empty()
                : Optional.of(new Interval(later.low, later.lowIncluded, sooner.high, sooner.highIncluded));
    }

    /** Whether the two make one stretch without a hole, given that this one starts first. */
    boolean runsInto(Interval next) {
        if (high.isEmpty() || next.low.isEmpty()) {
            return true;
        }
        int order = high.get().compareTo(next.low.get());
        return order > 0 || (order == 0 && (highIncluded || next.lowIncluded));
    }

    /** From this one's start to the later of the two ends. */
    Interval until(Interval other) {
        Interval later = compareHigh(this, other) >= 0 ? this : other;
        return new Interval(low, lowIncluded, later.high, later.highIncluded);
    }

    private static int compareLow(Interval a, Interval b) {
        if (a.low.isEmpty() || b.low.isEmpty()) {
            return Boolean.compare(a.low.isPresent(), b.low.isPresent());
        }
        int order = a.low.get().compareTo(b.low.get());
        return order != 0 ? order : Boolean.compare(b.lowIncluded, a.lowIncluded);
    }

    private static int compareHigh(Interval a, Interval b) {
        if (a.high.isEmpty() || b.high.isEmpty()) {
            return Boolean.compare(b.high.isPresent(), a.high.isPresent());
        }
        int order = a.high.get().compareTo(b.high.get());
        return order != 0 ? order : Boolean.compare(a.highIncluded, b.highIncluded);
    }

    private static BigDecimal canonical(BigDecimal value) {
        return value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    }
}
