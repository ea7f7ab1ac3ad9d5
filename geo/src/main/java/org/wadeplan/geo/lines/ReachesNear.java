package org.wadeplan.geo.lines;

import java.util.Arrays;

/** Finds the reaches near nodes and keeps a list of what it found. Not safe to share between threads. */
final class ReachesNear {

    /** So much more of a segment is looked at than could be near; what is near is then decided by exact distance. */
    private static final double ROUNDING_M = 1e-6;

    private final ReachCut cut;
    private final LineSet lines;
    private final CutRule rule;
    private final double clearM;

    private int count;
    private int[] reach = new int[256];
    private int[] node = new int[256];
    private double[] distanceM = new double[256];

    /** Told of one reach near one node; the same pair may come more than once. */
    @FunctionalInterface
    interface Pair {
        void near(int reach, int node, double distanceM);
    }

    ReachesNear(ReachCut cut, double clearM) {
        this.cut = cut;
        this.lines = cut.lines();
        this.rule = cut.rule();
        this.clearM = clearM;
        if (!(clearM >= 0)) {
            throw new IllegalArgumentException("Cannot keep " + clearM + " m clear");
        }
    }

    void each(Pair pair) {
        for (int i = 0; i < count; i++) {
            pair.near(reach[i], node[i], distanceM[i]);
        }
    }

    /** All reaches with a point within the distance of a node, on whichever line. */
    void look(PackedSegmentIndex index, int ofNode, double eastM, double northM) {
        double aroundM = clearM + ROUNDING_M;
        index.eachIn(eastM - aroundM, northM - aroundM, eastM + aroundM, northM + aroundM, (line, end) -> {
            if (cut.firstReach(line) < cut.endReach(line)) {
                segment(ofNode, line, end, eastM, northM);
            }
        });
    }

    /** All reaches of a line that come within the distance of a chainage, measured along the line. */
    void along(int ofNode, int line, double atM) {
        eachReach(line, atM - clearM - ROUNDING_M, atM + clearM + ROUNDING_M, (which, lowM, highM) -> {
            double awayM = Math.max(0, Math.max(lowM - atM, atM - highM));
            add(which, ofNode, awayM);
        });
    }

    private void segment(int ofNode, int line, int end, double eastM, double northM) {
        double nearest = share(end, eastM, northM);
        double awayM = distanceM(end, nearest, eastM, northM);
        if (!(awayM <= clearM)) {
            return;
        }
        double fromM = lines.chainageM(end - 1);
        double lengthM = lines.chainageM(end) - fromM;
        double nearestM = fromM + nearest * lengthM;
        // Only so much of the segment can be near: a chord of the circle around the node.
        double halfM = Math.sqrt(clearM * clearM - awayM * awayM) + ROUNDING_M;
        double lowestM = Math.max(fromM, nearestM - halfM);
        double highestM = Math.min(fromM + lengthM, nearestM + halfM);
        eachReach(line, lowestM, highestM, (which, lowM, highM) -> {
            double atShare = Math.min((highM - fromM) / lengthM, Math.max((lowM - fromM) / lengthM, nearest));
            add(which, ofNode, atShare == nearest ? awayM : distanceM(end, atShare, eastM, northM));
        });
    }

    private double share(int end, double eastM, double northM) {
        return PlaneSegment.share(
                eastM, northM, lines.eastM(end - 1), lines.northM(end - 1), lines.eastM(end), lines.northM(end));
    }

    private double distanceM(int end, double share, double eastM, double northM) {
        double within = Math.min(1, Math.max(0, share));
        double east = PlaneSegment.at(lines.eastM(end - 1), lines.eastM(end), within) - eastM;
        double north = PlaneSegment.at(lines.northM(end - 1), lines.northM(end), within) - northM;
        return Math.sqrt(east * east + north * north);
    }

    @FunctionalInterface
    private interface Stretch {
        void reach(int reach, double lowM, double highM);
    }

    /** The reaches of a line that share a chainage with a stretch, each with its own smaller and larger chainage. */
    private void eachReach(int line, double lowestM, double highestM, Stretch stretch) {
        double lineM = lines.lengthM(line);
        double nearM = rule.fromLast() ? lineM - highestM : lowestM;
        double farM = rule.fromLast() ? lineM - lowestM : highestM;
        int reaches = cut.endReach(line) - cut.firstReach(line);
        // One more on each side: whether a reach's very end lies on the stretch is decided on chainages, not on a
        // division.
        int from = (int) Math.max(0, Math.floor(nearM / rule.lengthM()) - 1);
        int to = (int) Math.min(reaches - 1, Math.floor(farM / rule.lengthM()) + 1);
        for (int i = from; i <= to; i++) {
            double startM = i * rule.lengthM();
            double endM = (i + 1) * rule.lengthM();
            double lowM = rule.fromLast() ? Math.max(0, lineM - endM) : startM;
            double highM = rule.fromLast() ? lineM - startM : Math.min(lineM, endM);
            if (lowM <= highestM && highM >= lowestM) {
                stretch.reach(cut.firstReach(line) + i, lowM, highM);
            }
        }
    }

    private void add(int which, int ofNode, double awayM) {
        if (!(awayM <= clearM)) {
            return;
        }
        if (count == reach.length) {
            reach = Arrays.copyOf(reach, 2 * count);
            node = Arrays.copyOf(node, 2 * count);
            distanceM = Arrays.copyOf(distanceM, 2 * count);
        }
        reach[count] = which;
        node[count] = ofNode;
        distanceM[count++] = awayM;
    }
}
