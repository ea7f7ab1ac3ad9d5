package org.wadeplan.planner.effort;

/**
 * How the share of species met grows with the length fished: 1 - exp(-k L). The form is ours; k comes from one published
 * point each.
 *
 * @param perUnit k, for each metre or for each stream width
 */
public record Accumulation(double perUnit) {

    /** Nine in ten species at 150 m (David et al. 2010: beyond 150 m a further species is rare, under 10 %). */
    public static final Accumulation BY_METRE = through(0.9, 150);

    /** Nine in ten species at 40 mean widths (Reynolds et al. 2003). */
    public static final Accumulation BY_WIDTH = through(0.9, 40);

    public Accumulation {
        if (!(perUnit > 0) || Double.isInfinite(perUnit)) {
            throw new IllegalArgumentException("The rate must be above 0, not " + perUnit);
        }
    }

    /** The curve through one known point. */
    public static Accumulation through(double share, double length) {
        if (!(share > 0 && share < 1 && length > 0)) {
            throw new IllegalArgumentException("A curve needs a share between 0 and 1 at a length above 0");
        }
        return new Accumulation(-Math.log1p(-share) / length);
    }

    /** Share of species met, 0 to 1. */
    public double shareAt(double length) {
        return -Math.expm1(-perUnit * length);
    }

    /** Length at which that share is met. */
    public double lengthFor(double share) {
        return -Math.log1p(-share) / perUnit;
    }
}
