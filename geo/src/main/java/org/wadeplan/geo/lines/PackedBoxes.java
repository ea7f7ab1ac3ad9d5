package org.wadeplan.geo.lines;

import java.util.Arrays;

/**
 * A packed tree of boxes: sixteen neighbours along a Hilbert curve share a parent, the parents likewise, up to one root.
 *
 * <p>Sides are rounded outwards to single precision, so a box never misses what it holds. All levels lie in one array,
 * the lowest first, and a parent's children are found by arithmetic. Immutable.
 */
final class PackedBoxes {

    private static final int FAN = 16;
    private static final int MOST_LEVELS = 10;

    /** No more boxes than this are ever waiting while the tree is walked in depth. */
    static final int MOST_OPEN = FAN * MOST_LEVELS;

    private static final int SAMPLE = 1024;
    private static final int HILBERT_BITS = 15;

    /** Number of the item of each box on the lowest level. */
    private final int[] item;

    /** West, south, east, north of each box, level by level. */
    private final float[] sides;

    /** First box of each level; the last entry is the number of boxes. */
    private final int[] levelStart;

    /** @param sides west, south, east, north of each item */
    PackedBoxes(float[] sides) {
        int count = sides.length / 4;
        this.item = alongHilbertCurve(sides, count);
        this.levelStart = levelStarts(count);
        this.sides = new float[4 * levelStart[levelStart.length - 1]];
        for (int box = 0; box < count; box++) {
            System.arraycopy(sides, 4 * item[box], this.sides, 4 * box, 4);
        }
        for (int level = 1; level < levelStart.length - 1; level++) {
            for (int box = levelStart[level]; box < levelStart[level + 1]; box++) {
                enclose(box, childrenStart(box, level), childrenEnd(box, level));
            }
        }
    }

    static float down(double side) {
        float near = (float) side;
        return near > side ? Math.nextDown(near) : near;
    }

    static float up(double side) {
        float near = (float) side;
        return near < side ? Math.nextUp(near) : near;
    }

    /** The box that holds all others; -1 where there is none. */
    int root() {
        return item.length == 0 ? -1 : levelStart[levelStart.length - 1] - 1;
    }

    boolean isItem(int box) {
        return box < item.length;
    }

    int item(int box) {
        return item[box];
    }

    int childrenStart(int box) {
        return childrenStart(box, level(box));
    }

    int childrenEnd(int box) {
        return childrenEnd(box, level(box));
    }

    /** The square of the distance from a place to the box, 0 inside: never more than to anything in it. */
    double distanceM2(int box, double eastM, double northM) {
        int at = 4 * box;
        double east = Math.max(0, Math.max(sides[at] - eastM, eastM - sides[at + 2]));
        double north = Math.max(0, Math.max(sides[at + 1] - northM, northM - sides[at + 3]));
        return east * east + north * north;
    }

    boolean meets(int box, double west, double south, double east, double north) {
        int at = 4 * box;
        return sides[at] <= east && sides[at + 2] >= west && sides[at + 1] <= north && sides[at + 3] >= south;
    }

    private int level(int box) {
        int level = 0;
        while (box >= levelStart[level + 1]) {
            level++;
        }
        return level;
    }

    private int childrenStart(int box, int level) {
        return levelStart[level - 1] + (box - levelStart[level]) * FAN;
    }

    private int childrenEnd(int box, int level) {
        return Math.min(childrenStart(box, level) + FAN, levelStart[level]);
    }

    private void enclose(int box, int from, int to) {
        System.arraycopy(sides, 4 * from, sides, 4 * box, 4);
        for (int child = from + 1; child < to; child++) {
            for (int side = 0; side < 2; side++) {
                sides[4 * box + side] = Math.min(sides[4 * box + side], sides[4 * child + side]);
                sides[4 * box + 2 + side] = Math.max(sides[4 * box + 2 + side], sides[4 * child + 2 + side]);
            }
        }
    }

    private static int[] levelStarts(int count) {
        int[] starts = new int[MOST_LEVELS + 1];
        int levels = 1;
        starts[1] = count;
        for (int width = count; width > 1; ) {
            width = (width + FAN - 1) / FAN;
            starts[levels + 1] = starts[levels] + width;
            levels++;
        }
        return Arrays.copyOf(starts, levels + 1);
    }

    /** Items by their place along the curve, then by number. */
    private static int[] alongHilbertCurve(float[] sides, int count) {
        double[] east = usualRange(sides, count, 0);
        double[] north = usualRange(sides, count, 1);
        long[] keys = new long[count];
        for (int i = 0; i < count; i++) {
            int column = cell(middle(sides, i, 0), east);
            int row = cell(middle(sides, i, 1), north);
            keys[i] = (long) hilbert(column, row) << 31 | i;
        }
        Arrays.parallelSort(keys);
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            order[i] = (int) (keys[i] & Integer.MAX_VALUE);
        }
        return order;
    }

    private static double middle(float[] sides, int item, int side) {
        return ((double) sides[4 * item + side] + sides[4 * item + side + 2]) / 2;
    }

    /** Where most middles lie: one stray vertex far away must not squeeze all others into one cell of the curve. */
    private static double[] usualRange(float[] sides, int count, int side) {
        double[] some = new double[Math.min(count, SAMPLE)];
        for (int i = 0; i < some.length; i++) {
            some[i] = middle(sides, (int) ((long) i * count / some.length), side);
        }
        Arrays.sort(some);
        if (some.length == 0) {
            return new double[] {0, 1};
        }
        double low = some[some.length / 100];
        double high = some[some.length - 1 - some.length / 100];
        double margin = Math.max((high - low) * 0.1, Double.MIN_NORMAL);
        return new double[] {low - margin, high + margin};
    }

    private static int cell(double middle, double[] range) {
        double share = (middle - range[0]) / (range[1] - range[0]);
        return (int) (Math.min(1, Math.max(0, share)) * ((1 << HILBERT_BITS) - 1));
    }

    /** Place of a cell along the Hilbert curve; bit by bit from the largest square, turning as the curve turns. */
    static int hilbert(int column, int row) {
        int x = column;
        int y = row;
        int place = 0;
        for (int half = 1 << (HILBERT_BITS - 1); half > 0; half >>= 1) {
            boolean right = (x & half) != 0;
            boolean upper = (y & half) != 0;
            place = place << 2 | (right ? upper ? 2 : 3 : upper ? 1 : 0);
            if (!upper) {
                int kept = right ? half - 1 - (x & (half - 1)) : x & (half - 1);
                x = right ? half - 1 - (y & (half - 1)) : y & (half - 1);
                y = kept;
            }
        }
        return place;
    }
}
