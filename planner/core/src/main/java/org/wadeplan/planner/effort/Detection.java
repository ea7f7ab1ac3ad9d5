package org.wadeplan.planner.effort;

/**
 * What it takes to meet a species that is there. All of it holds only where the units are independent: neighbouring
 * sub-reaches share water, crew and luck, and a second visit in the same week meets fish that remember the first. Then
 * the true numbers needed are higher.
 */
public final class Detection {

    /** To be shown with every figure of this class. */
    public static final String CAUTION =
            "This holds only where units are independent. Sub-reaches side by side and visits soon after one another are"
                    + " not: take the numbers as the least that it takes. A blank is never proof of absence.";

    /** Keeps an exact case, such as 0.9 in one unit of 0.9, from asking for one unit more. */
    private static final double ROUNDING_DUST = 1e-12;

    private Detection() {}

    /** Probability of meeting it at least once in n units: 1 - (1 - p)^n. */
    public static double probability(double perUnit, int units) {
        return 1 - Math.pow(1 - share(perUnit), count(units));
    }

    /** Units needed for a target below 1: ceil(ln(1 - target)/ln(1 - p)), at least one. */
    public static int unitsNeeded(double perUnit, double target) {
        return share(perUnit) == 1 ? 1 : Math.max(1, whole(Math.log1p(-belowOne(target)) / Math.log1p(-perUnit)));
    }

    /** Probability in each unit that reaches the target in n units: 1 - (1 - target)^(1/n). */
    public static double perUnitNeeded(double target, int units) {
        return -Math.expm1(Math.log1p(-share(target)) / count(units));
    }

    /** Probability that it is there after n blank units: psi (1-p)^n/(1 - psi + psi (1-p)^n). */
    public static double presenceAfterBlanks(double presence, double perUnit, int blanks) {
        double missed = belowOne(presence) * Math.pow(1 - share(perUnit), blanks);
        return missed / (1 - presence + missed);
    }

    /** Blank units after which the probability that it is there has fallen to a limit. */
    public static int blanksNeeded(double presence, double perUnit, double limit) {
        double odds = belowOne(limit) / (1 - limit) * (1 - belowOne(presence)) / presence;
        if (odds >= 1) {
            return 0;
        }
        return share(perUnit) == 1 ? 1 : whole(Math.log(odds) / Math.log1p(-perUnit));
    }

    private static int whole(double exact) {
        return (int) Math.ceil(exact - ROUNDING_DUST * Math.max(1, exact));
    }

    private static double belowOne(double value) {
        if (value == 1) {
            throw new IllegalArgumentException("A probability of exactly 1 is never reached by sampling");
        }
        return share(value);
    }

    private static double share(double value) {
        if (!(value > 0 && value <= 1)) {
            throw new IllegalArgumentException("A probability must be above 0 and at most 1, not " + value);
        }
        return value;
    }

    private static int count(int units) {
        if (units < 1) {
            throw new IllegalArgumentException("Units are counted from 1, not " + units);
        }
        return units;
    }
}
