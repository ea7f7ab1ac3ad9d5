package org.wadeplan.geo.network;

import org.wadeplan.geo.lines.LineSet;

/** Points in square cells, hashed, so that those near a segment are found without looking at the rest. */
final class PointGrid {

    /** Sides of a cell, metres: about the spacing of mapped vertices, so that a segment crosses few cells. */
    private static final double CELL_M = 50;

    private final double[] eastM;
    private final double[] northM;
    private final double cellM;
    private final double reachM;
    private final int mask;
    private final int[] start;
    private final int[] points;

    /**
     * A grid of points.
     *
     * @param reachM points this near to a segment are found
     */
    PointGrid(double[] eastM, double[] northM, double reachM) {
        this.eastM = eastM;
        this.northM = northM;
        this.reachM = reachM;
        this.cellM = Math.max(CELL_M, 2 * reachM);
        this.mask = Math.max(16, Integer.highestOneBit(Math.max(1, eastM.length)) * 4) - 1;
        this.start = new int[mask + 2];
        for (int point = 0; point < eastM.length; point++) {
            start[bucket(cell(eastM[point]), cell(northM[point])) + 1]++;
        }
        for (int bucket = 0; bucket <= mask; bucket++) {
            start[bucket + 1] += start[bucket];
        }
        int[] next = java.util.Arrays.copyOf(start, start.length);
        this.points = new int[eastM.length];
        for (int point = 0; point < eastM.length; point++) {
            points[next[bucket(cell(eastM[point]), cell(northM[point]))]++] = point;
        }
    }

    /** Takes one point that may be near; the same point may come more than once. */
    interface Visitor {
        void point(int number);
    }

    /** Shows every point within reach of a segment, and some that are further off. */
    void near(LineSet lines, int endVertex, Visitor visitor) {
        double fromEast = lines.eastM(endVertex - 1);
        double toEast = lines.eastM(endVertex);
        double fromNorth = lines.northM(endVertex - 1);
        double toNorth = lines.northM(endVertex);
        long west = cell(Math.min(fromEast, toEast) - reachM);
        long east = cell(Math.max(fromEast, toEast) + reachM);
        long south = cell(Math.min(fromNorth, toNorth) - reachM);
        long north = cell(Math.max(fromNorth, toNorth) + reachM);
        if ((double) (east - west) + (double) (north - south) > points.length) {
            for (int point = 0; point < points.length; point++) {
                visitor.point(point);
            }
            return;
        }
        boolean small = east - west <= 1 || north - south <= 1;
        double slope = (toNorth - fromNorth) / (toEast - fromEast);
        for (long column = west; column <= east; column++) {
            long low = south;
            long high = north;
            if (!small) {
                double left = clamp(column * cellM - reachM, fromEast, toEast);
                double right = clamp((column + 1) * cellM + reachM, fromEast, toEast);
                double atLeft = fromNorth + slope * (left - fromEast);
                double atRight = fromNorth + slope * (right - fromEast);
                low = Math.max(south, cell(Math.min(atLeft, atRight) - reachM) - 1);
                high = Math.min(north, cell(Math.max(atLeft, atRight) + reachM) + 1);
            }
            for (long row = low; row <= high; row++) {
                show(column, row, visitor);
            }
        }
    }

    private void show(long column, long row, Visitor visitor) {
        int bucket = bucket(column, row);
        for (int i = start[bucket]; i < start[bucket + 1]; i++) {
            visitor.point(points[i]);
        }
    }

    private static double clamp(double value, double a, double b) {
        return Math.min(Math.max(a, b), Math.max(Math.min(a, b), value));
    }

    private long cell(double ordinate) {
        return (long) Math.floor(ordinate / cellM);
    }

    private int bucket(long column, long row) {
        long mixed = column * 0x9E3779B97F4A7C15L + row * 0xC2B2AE3D27D4EB4FL;
        mixed ^= mixed >>> 32;
        mixed *= 0xD6E8FEB86659FD93L;
        return (int) (mixed >>> 32) & mask;
    }

    double eastM(int point) {
        return eastM[point];
    }

    double northM(int point) {
        return northM[point];
    }

    int size() {
        return points.length;
    }
}
