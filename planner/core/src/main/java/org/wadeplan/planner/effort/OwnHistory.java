package org.wadeplan.planner.effort;

import java.util.List;

/**
 * How far a site's own visits count against a model of its method.
 *
 * <p>From three visits on the site speaks for itself, by its median. With fewer, the model stands in for the visits that
 * are missing: after one visit it counts two thirds, after two one third. Both the form and the three are ours; see
 * docs/decisions/0019.
 */
final class OwnHistory {

    /** Fewer visits than this say too little about a site's usual time, and nothing about its spread. */
    static final int FULL_VISITS = 3;

    private OwnHistory() {}

    /** True where the site needs no model. */
    static boolean speaksForItself(List<Double> own) {
        return own.size() >= FULL_VISITS;
    }

    /** The median of the site's own visits, mixed with the model where there are fewer than three. */
    static double median(List<Double> own, double model) {
        double share = Math.min(1, own.size() / (double) FULL_VISITS);
        return own.isEmpty() ? model : share * Quantile.median(own) + (1 - share) * model;
    }

    /** {@code no earlier visit}, {@code 1 earlier visit}. */
    static String words(int visits) {
        return visits == 0 ? "no earlier visit" : visits + (visits == 1 ? " earlier visit" : " earlier visits");
    }
}
