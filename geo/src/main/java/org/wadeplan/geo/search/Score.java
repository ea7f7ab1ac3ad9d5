package org.wadeplan.geo.search;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How good a candidate is, and why.
 *
 * <p>A part that nobody knows counts half, so neither for nor against; how far the score could be off for that is given
 * by its lowest and highest.
 *
 * @param points 0 to 100
 * @param lowest if all that is unknown earned nothing
 * @param highest if all that is unknown earned its full weight
 * @param parts in a fixed order
 */
public record Score(double points, double lowest, double highest, List<Part> parts) {

    /**
     * One part.
     *
     * @param name {@code walk-in}
     * @param found {@code 180 m}, or why nothing is known
     * @param weight points at best
     * @param points earned; empty where the figure is not known
     */
    public record Part(String name, String found, double weight, OptionalDouble points) {}

    public Score {
        parts = List.copyOf(parts);
    }

    /** Weights need not add up to 100. */
    static Score of(List<Part> parts) {
        double full = 0;
        double unknown = 0;
        double earned = 0;
        for (Part part : parts) {
            full += part.weight();
            earned += part.points().orElse(0);
            unknown += part.points().isPresent() ? 0 : part.weight();
        }
        if (full == 0) {
            return new Score(0, 0, 0, parts);
        }
        return new Score(points(earned, unknown, full), 100 * earned / full, 100 * (earned + unknown) / full, parts);
    }

    /** Points of known parts, half those of unknown ones, of all that there are: 0 to 100. */
    static double points(double earned, double unknown, double full) {
        return full == 0 ? 0 : 100 * (earned + unknown / 2) / full;
    }
}
