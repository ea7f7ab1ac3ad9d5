package org.wadeplan.planner.effort;

import java.util.List;

/**
 * Sums to check one's own against: never a recommendation of an agent or a dose. Which agent, how much and whether at all
 * is for licensed practice, the permit, animal ethics and the product's own label.
 */
public final class WelfareSums {

    /** To be shown with every figure of this class. */
    public static final List<String> CAUTIONS = List.of(
            "Check figures only, never a recommendation. Agent and dose come from the permit, the ethics approval, licensed"
                    + " practice and the product's own label; what is lawful differs by country.",
            "Gloves and eye protection; test on few fish first: small fish overdose first. Stop where they do not come"
                    + " round. Never tip dosed water into a stream.",
            "Buckets: cool, shaded, aerated, lidded; large and preying fish apart; wet hands; let fish recover before"
                    + " release, and release before the next pass.");

    private static final double MG_PER_G = 1000;

    private WelfareSums() {}

    /** Stock solution for a bath, mL: dose [mg/L] x bath [L] / stock [mg/mL]. */
    public static double stockMl(double doseMgL, double bathL, double stockMgMl) {
        return positive(doseMgL) * positive(bathL) / positive(stockMgMl);
    }

    /** Powder for a bath, g: dose [mg/L] x bath [L] / 1000. */
    public static double powderG(double doseMgL, double bathL) {
        return positive(doseMgL) * positive(bathL) / MG_PER_G;
    }

    /** Buckets so that none holds more than that many fish; 0 for no fish. */
    public static int buckets(int fish, int mostInABucket) {
        if (fish < 0 || mostInABucket < 1) {
            throw new IllegalArgumentException("Fish are counted from 0 and a bucket holds at least 1");
        }
        return (fish + mostInABucket - 1) / mostInABucket;
    }

    private static double positive(double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("Dose, bath and stock must be above 0, not " + value);
        }
        return value;
    }
}
