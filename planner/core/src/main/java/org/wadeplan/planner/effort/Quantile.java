package org.wadeplan.planner.effort;

import java.util.List;

/** Sample quantiles of definition 7 of Hyndman and Fan (1996, Sample quantiles in statistical packages). */
public final class Quantile {

    private Quantile() {}

    /**
     * The value below which a share of the sample lies, straight lines between the sorted values.
     *
     * @param values at least one
     * @param share 0 to 1
     */
    public static double of(List<Double> values, double share) {
        if (values.isEmpty() || !(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("A quantile needs values and a share from 0 to 1, not " + share);
        }
        List<Double> sorted = values.stream().sorted().toList();
        double position = (sorted.size() - 1) * share;
        int below = (int) Math.floor(position);
        int above = Math.min(below + 1, sorted.size() - 1);
        return sorted.get(below) + (position - below) * (sorted.get(above) - sorted.get(below));
    }

    public static double median(List<Double> values) {
        return of(values, 0.5);
    }
}
