package org.wadeplan.geo.draw;

import java.util.Arrays;

/**
 * The local pivotal method, second form: neighbours compete, so that drawn units keep apart.
 *
 * <p>Source: Grafström, Lundström & Schelin 2012, Spatially balanced sampling through the pivotal method, Biometrics
 * 68:514-520. A unit picked at random meets its nearest undecided neighbour. Where their probabilities add up to less than
 * 1, one of the two gets the sum and the other is out; otherwise one is in and the other keeps what exceeds 1. Each bout is
 * fair, so every unit's probability stays what it was and the sum never changes.
 *
 * <p>Here a probability is a whole number of shares of {@code whole}: sums are exact, nothing is rounded, and the last
 * unit is decided by its own shares, which by then are none or all. Ties in distance go to the smaller number instead of
 * being drawn; bouts stay fair whoever meets whom.
 */
final class LocalPivot {

    private final long[] shares;
    private final long whole;
    private final SplitMix64 random;
    private final LivingTree tree;
    private final int[] undecided;
    private final int[] placeOf;
    private int undecidedCount;

    /**
     * A draw that has not begun.
     *
     * @param shares of each unit, 0 to {@code whole}; copied
     * @param whole what stands for probability 1
     * @param eastM of each unit
     * @param northM of each unit
     */
    LocalPivot(long[] shares, long whole, double[] eastM, double[] northM, SplitMix64 random) {
        this.shares = shares.clone();
        this.whole = whole;
        this.random = random;
        this.tree = new LivingTree(eastM, northM);
        this.undecided = new int[shares.length];
        this.placeOf = new int[shares.length];
        for (int unit = 0; unit < shares.length; unit++) {
            if (shares[unit] < 0 || shares[unit] > whole) {
                throw new IllegalArgumentException(
                        "Unit " + unit + " has " + shares[unit] + " of " + whole + " shares");
            }
            undecided[unit] = unit;
            placeOf[unit] = unit;
        }
        this.undecidedCount = shares.length;
        for (int unit = 0; unit < shares.length; unit++) {
            leaveWhereDecided(unit);
        }
    }

    /**
     * The units drawn, by rising number.
     *
     * @throws IllegalArgumentException where the shares do not add up to a whole number of units
     */
    static int[] draw(long[] shares, long whole, double[] eastM, double[] northM, SplitMix64 random) {
        if (Arrays.stream(shares).sum() % whole != 0) {
            throw new IllegalArgumentException("The shares add up to no whole number of units");
        }
        LocalPivot draw = new LocalPivot(shares, whole, eastM, northM, random);
        while (draw.undecidedCount > 0) {
            draw.bout();
        }
        return draw.drawn();
    }

    /** As many of the units as wanted, each with the same probability. */
    static int[] drawEqually(int wanted, double[] eastM, double[] northM, SplitMix64 random) {
        long[] shares = new long[eastM.length];
        Arrays.fill(shares, wanted);
        return draw(shares, eastM.length, eastM, northM, random);
    }

    /** One meeting of two neighbours. */
    void bout() {
        int first = undecided[(int) random.below(undecidedCount)];
        int second = tree.nearestOther(first);
        long sum = shares[first] + shares[second];
        if (sum < whole) {
            boolean firstStays = random.below(sum) < shares[first];
            shares[first] = firstStays ? sum : 0;
            shares[second] = firstStays ? 0 : sum;
        } else {
            boolean firstIsIn = random.below(2 * whole - sum) < whole - shares[second];
            shares[first] = firstIsIn ? whole : sum - whole;
            shares[second] = firstIsIn ? sum - whole : whole;
        }
        leaveWhereDecided(first);
        leaveWhereDecided(second);
    }

    int undecidedCount() {
        return undecidedCount;
    }

    long sharesOf(int unit) {
        return shares[unit];
    }

    private int[] drawn() {
        int[] drawn = new int[shares.length];
        int count = 0;
        for (int unit = 0; unit < shares.length; unit++) {
            if (shares[unit] == whole) {
                drawn[count++] = unit;
            }
        }
        return Arrays.copyOf(drawn, count);
    }

    private void leaveWhereDecided(int unit) {
        if (shares[unit] > 0 && shares[unit] < whole) {
            return;
        }
        tree.remove(unit);
        int place = placeOf[unit];
        int last = undecided[--undecidedCount];
        undecided[place] = last;
        placeOf[last] = place;
    }
}
