package org.wadeplan.geo.network;

import org.wadeplan.geo.lines.LineSet;

/**
 * The square cells that a segment passes, by hashed numbers from 0 to a mask. Different cells may share a number, so what
 * is found there has to be looked at again; no cell that the segment passes is missed.
 */
final class CellWalk {

    /** Cuts at the sides of a column are computed, not exact: this share of a cell more is looked at. */
    private static final double ROUNDING = 0.01;

    private final double cellM;
    private final double reachM;
    private final int mask;

    /**
     * A way of walking.
     *
     * @param cellM side of a cell, metres, at least twice the reach
     * @param reachM cells this near to a segment count as passed
     * @param about how many different numbers there should be at least
     */
    CellWalk(double cellM, double reachM, int about) {
        this.cellM = cellM;
        this.reachM = reachM;
        this.mask = Math.max(16, Integer.highestOneBit(Math.min(1 << 28, Math.max(1, about))) * 2) - 1;
    }

    /** Takes the number of one cell; the same number may come more than once for one segment. */
    interface Visitor {
        void cell(int number);
    }

    int numbers() {
        return mask + 1;
    }

    /** The cell of one place. */
    int cellOf(double eastM, double northM) {
        return number(cell(eastM), cell(northM));
    }

    /** About how many cells {@link #walk} shows at most for the segment that ends at a vertex. */
    double span(LineSet lines, int endVertex) {
        return (Math.abs(lines.eastM(endVertex) - lines.eastM(endVertex - 1))
                                + Math.abs(lines.northM(endVertex) - lines.northM(endVertex - 1)))
                        / cellM
                + 4;
    }

    /** Shows the cells that the segment ending at a vertex passes, column by column. */
    void walk(LineSet lines, int endVertex, Visitor visitor) {
        double fromEast = lines.eastM(endVertex - 1);
        double toEast = lines.eastM(endVertex);
        double fromNorth = lines.northM(endVertex - 1);
        double toNorth = lines.northM(endVertex);
        long west = cell(Math.min(fromEast, toEast) - reachM);
        long east = cell(Math.max(fromEast, toEast) + reachM);
        long south = cell(Math.min(fromNorth, toNorth) - reachM);
        long north = cell(Math.max(fromNorth, toNorth) + reachM);
        boolean whole = east - west <= 1 || north - south <= 1;
        double slope = (toNorth - fromNorth) / (toEast - fromEast);
        for (long column = west; column <= east; column++) {
            long low = south;
            long high = north;
            if (!whole) {
                double atLeft = fromNorth + slope * (clamp(column * cellM - reachM, fromEast, toEast) - fromEast);
                double atRight =
                        fromNorth + slope * (clamp((column + 1) * cellM + reachM, fromEast, toEast) - fromEast);
                low = Math.max(south, cell(Math.min(atLeft, atRight) - reachM - ROUNDING * cellM));
                high = Math.min(north, cell(Math.max(atLeft, atRight) + reachM + ROUNDING * cellM));
            }
            for (long row = low; row <= high; row++) {
                visitor.cell(number(column, row));
            }
        }
    }

    private static double clamp(double value, double a, double b) {
        return Math.min(Math.max(a, b), Math.max(Math.min(a, b), value));
    }

    private long cell(double ordinate) {
        return (long) Math.floor(ordinate / cellM);
    }

    private int number(long column, long row) {
        long mixed = column * 0x9E3779B97F4A7C15L + row * 0xC2B2AE3D27D4EB4FL;
        mixed ^= mixed >>> 32;
        mixed *= 0xD6E8FEB86659FD93L;
        return (int) (mixed >>> 32) & mask;
    }
}
