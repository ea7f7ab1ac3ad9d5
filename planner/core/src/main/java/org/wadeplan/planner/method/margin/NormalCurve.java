package org.wadeplan.planner.method.margin;

/** The standard normal distribution. */
final class NormalCurve {

    /** Beyond it nothing is left that a double could add to 0 or 1. */
    private static final double FARTHEST = 8.5;

    private NormalCurve() {}

    /**
     * The chance of a value up to {@code z}, from 0 to 1. Source: G. Marsaglia, Evaluating the Normal Distribution, Journal
     * of Statistical Software 11 (2004), no. 4: a series whose terms are all of one sign, good to some 1e-15.
     *
     * @param z distance from the mean in standard deviations; infinite is allowed
     */
    static double upTo(double z) {
        if (z < -FARTHEST) {
            return 0;
        }
        if (z > FARTHEST) {
            return 1;
        }
        double sum = z;
        double term = z;
        for (int i = 3; sum + term != sum; i += 2) {
            term *= z * z / i;
            sum += term;
        }
        return 0.5 + sum * Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
    }

    /** The chance of a value between two distances, neither of which need be finite. */
    static double between(double from, double until) {
        // On the upper side both are close to 1; by symmetry their difference keeps its digits.
        return from > 0 ? upTo(-from) - upTo(-until) : upTo(until) - upTo(from);
    }
}
