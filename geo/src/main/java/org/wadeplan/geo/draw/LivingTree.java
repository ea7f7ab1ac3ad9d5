package org.wadeplan.geo.draw;

/**
 * Points in the plane from which the nearest living one can be asked and which can be taken out one by one.
 *
 * <p>A balanced k-d tree (Bentley 1975, Commun. ACM 18:509) whose nodes know how many living points they hold, so that
 * emptied parts are passed over. At the same distance the point with the smaller number is the nearest. Building takes
 * O(N log N), an answer about O(log N). Not safe to share between threads.
 */
final class LivingTree {

    private static final int LEAF_SIZE = 8;

    private final double[] eastM;
    private final double[] northM;
    private final int[] order;
    private final int[] leafOf;
    private final int firstLeaf;
    private final int[] leafStart;
    private final double[] split;
    private final boolean[] splitsEast;
    private final int[] living;

    private double askedEastM;
    private double askedNorthM;
    private int except;
    private int best;
    private double bestSquareM2;

    /** A tree over all points, all of them living; the arrays are read, never changed. */
    LivingTree(double[] eastM, double[] northM) {
        this.eastM = eastM;
        this.northM = northM;
        int count = eastM.length;
        int leaves = 1;
        while ((long) leaves * LEAF_SIZE < count) {
            leaves *= 2;
        }
        this.firstLeaf = leaves - 1;
        this.leafStart = new int[leaves];
        this.split = new double[firstLeaf];
        this.splitsEast = new boolean[firstLeaf];
        this.living = new int[firstLeaf + leaves];
        this.leafOf = new int[count];
        this.order = new int[count];
        for (int point = 0; point < count; point++) {
            order[point] = point;
        }
        build(0, 0, count);
    }

    private void build(int node, int from, int to) {
        living[node] = to - from;
        if (node >= firstLeaf) {
            leafStart[node - firstLeaf] = from;
            for (int at = from; at < to; at++) {
                leafOf[order[at]] = node;
            }
            return;
        }
        splitsEast[node] = spread(eastM, from, to) >= spread(northM, from, to);
        double[] ordinate = splitsEast[node] ? eastM : northM;
        int middle = (from + to) >>> 1;
        if (middle < to) {
            Median.place(order, ordinate, from, to - 1, middle);
            split[node] = ordinate[order[middle]];
        }
        build(2 * node + 1, from, middle);
        build(2 * node + 2, middle, to);
    }

    private double spread(double[] ordinate, int from, int to) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int at = from; at < to; at++) {
            least = Math.min(least, ordinate[order[at]]);
            most = Math.max(most, ordinate[order[at]]);
        }
        return most - least;
    }

    /** Takes a living point out. */
    void remove(int point) {
        int leaf = leafOf[point];
        int last = leafStart[leaf - firstLeaf] + living[leaf] - 1;
        int at = last;
        while (order[at] != point) {
            at--;
        }
        order[at] = order[last];
        order[last] = point;
        for (int node = leaf; node > 0; node = (node - 1) / 2) {
            living[node]--;
        }
        living[0]--;
    }

    /** The living point nearest to another of the tree; -1 where there is none. */
    int nearestOther(int point) {
        return nearest(eastM[point], northM[point], point);
    }

    /** The living point nearest to a place; -1 where there is none. */
    int nearest(double placeEastM, double placeNorthM) {
        return nearest(placeEastM, placeNorthM, -1);
    }

    private int nearest(double placeEastM, double placeNorthM, int leftOut) {
        askedEastM = placeEastM;
        askedNorthM = placeNorthM;
        except = leftOut;
        best = -1;
        bestSquareM2 = Double.POSITIVE_INFINITY;
        search(0, 0, 0);
        return best;
    }

    /** The offsets are the least that any point below the node lies away, squared, east and north apart. */
    private void search(int node, double offEastM2, double offNorthM2) {
        if (living[node] == 0) {
            return;
        }
        if (node >= firstLeaf) {
            searchLeaf(node);
            return;
        }
        double off = (splitsEast[node] ? askedEastM : askedNorthM) - split[node];
        int lower = 2 * node + 1;
        search(off < 0 ? lower : lower + 1, offEastM2, offNorthM2);
        double farEastM2 = splitsEast[node] ? off * off : offEastM2;
        double farNorthM2 = splitsEast[node] ? offNorthM2 : off * off;
        if (farEastM2 + farNorthM2 <= bestSquareM2) {
            search(off < 0 ? lower + 1 : lower, farEastM2, farNorthM2);
        }
    }

    private void searchLeaf(int leaf) {
        int from = leafStart[leaf - firstLeaf];
        for (int at = from; at < from + living[leaf]; at++) {
            int point = order[at];
            double offEastM = eastM[point] - askedEastM;
            double offNorthM = northM[point] - askedNorthM;
            double squareM2 = offEastM * offEastM + offNorthM * offNorthM;
            boolean nearer = squareM2 < bestSquareM2 || (squareM2 == bestSquareM2 && point < best);
            if (nearer && point != except) {
                best = point;
                bestSquareM2 = squareM2;
            }
        }
    }
}
