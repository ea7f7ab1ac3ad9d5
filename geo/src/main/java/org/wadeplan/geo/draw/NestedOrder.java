package org.wadeplan.geo.draw;

import java.util.Arrays;

/**
 * An order of drawn units whose every beginning is spread as well as it can be.
 *
 * <p>Half of the units are drawn by the local pivotal method with equal probabilities and come first; each half is ordered
 * the same way. Each unit is as likely to be among the first k as any other, for every k. The same splitting parts a draw
 * into base and reserves: a hierarchical use of the method of Grafström, Lundström & Schelin 2012.
 */
final class NestedOrder {

    private final double[] eastM;
    private final double[] northM;
    private final SplitMix64 random;

    NestedOrder(double[] eastM, double[] northM, SplitMix64 random) {
        this.eastM = eastM;
        this.northM = northM;
        this.random = random;
    }

    /** The units with as many as wanted, drawn among them, in front of the rest; both by rising number. */
    int[] drawnFirst(int[] units, int wanted) {
        int[] drawn = LocalPivot.drawEqually(wanted, of(eastM, units), of(northM, units), random);
        int[] split = new int[units.length];
        int first = 0;
        int rest = wanted;
        for (int i = 0; i < units.length; i++) {
            if (first < wanted && drawn[first] == i) {
                split[first++] = units[i];
            } else {
                split[rest++] = units[i];
            }
        }
        return split;
    }

    /** The units in their order. */
    int[] order(int[] units) {
        if (units.length < 2) {
            return units.clone();
        }
        int half = (units.length + 1) / 2;
        int[] split = drawnFirst(units, half);
        int[] ordered = Arrays.copyOf(order(Arrays.copyOf(split, half)), units.length);
        int[] second = order(Arrays.copyOfRange(split, half, split.length));
        System.arraycopy(second, 0, ordered, half, second.length);
        return ordered;
    }

    private static double[] of(double[] ordinate, int[] units) {
        double[] some = new double[units.length];
        for (int i = 0; i < units.length; i++) {
            some[i] = ordinate[units[i]];
        }
        return some;
    }
}
