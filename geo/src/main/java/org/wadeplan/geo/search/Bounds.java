package org.wadeplan.geo.search;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What is allowed of a figure, both ends included.
 *
 * @param min least; empty for no lower limit
 * @param max most; empty for no upper limit
 */
public record Bounds(OptionalDouble min, OptionalDouble max) {

    /** Anything goes. */
    public static final Bounds NONE = new Bounds(OptionalDouble.empty(), OptionalDouble.empty());

    public Bounds {
        if (min.isPresent() && max.isPresent() && min.getAsDouble() > max.getAsDouble()) {
            throw new IllegalArgumentException("Nothing lies between " + min + " and " + max);
        }
    }

    public static Bounds atMost(double max) {
        return new Bounds(OptionalDouble.empty(), OptionalDouble.of(max));
    }

    public static Bounds atLeast(double min) {
        return new Bounds(OptionalDouble.of(min), OptionalDouble.empty());
    }

    public static Bounds between(double min, double max) {
        return new Bounds(OptionalDouble.of(min), OptionalDouble.of(max));
    }

    public boolean allowsAll() {
        return min.isEmpty() && max.isEmpty();
    }

    public boolean allows(double value) {
        return value >= min.orElse(Double.NEGATIVE_INFINITY) && value <= max.orElse(Double.POSITIVE_INFINITY);
    }

    /** {@code at least 2}, {@code at most 4 %}, {@code 1 to 4 %}. */
    public String words(String unit) {
        String after = unit.isBlank() ? "" : " " + unit;
        if (min.isPresent() && max.isPresent()) {
            return number(min.getAsDouble()) + " to " + number(max.getAsDouble()) + after;
        }
        return min.isPresent()
                ? "at least " + number(min.getAsDouble()) + after
                : max.isPresent() ? "at most " + number(max.getAsDouble()) + after : "any";
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
