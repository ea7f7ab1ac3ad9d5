package org.wadeplan.geo.search;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How good a candidate is, and why. Parts that nobody knows count neither for nor against it: the points are a share of
 * the weight of the known parts.
 *
 * @param points 0 to 100
 * @param parts in a fixed order
 * @param knownWeight weight of the parts that are known
 * @param fullWeight weight of all parts
 */
public record Score(double points, List<Part> parts, double knownWeight, double fullWeight) {

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

    static Score of(List<Part> parts) {
        double known = 0;
        double full = 0;
        double points = 0;
        for (Part part : parts) {
            full += part.weight();
            if (part.points().isPresent()) {
                known += part.weight();
                points += part.points().getAsDouble();
            }
        }
        return new Score(known > 0 ? 100 * points / known : 0, parts, known, full);
    }
}
