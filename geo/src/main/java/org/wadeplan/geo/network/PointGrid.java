package org.wadeplan.geo.network;

import java.util.Arrays;
import org.wadeplan.geo.lines.LineSet;

/** Points in square cells, so that those near a segment are found without looking at the rest. */
final class PointGrid {

    /** Sides of a cell, metres: about the spacing of mapped vertices, so that a segment passes few cells. */
    private static final double CELL_M = 50;

    private final CellWalk cells;
    private final int[] start;
    private final int[] points;
    private final CellWalk.Visitor shower;
    private final Visitor visitor;

    /**
     * A grid of points.
     *
     * @param reachM points this near to a segment are shown
     * @param visitor what they are shown to
     */
    PointGrid(double[] eastM, double[] northM, double reachM, Visitor visitor) {
        this.cells = new CellWalk(Math.max(CELL_M, 2 * reachM), reachM, 2 * eastM.length);
        this.start = new int[cells.numbers() + 1];
        for (int point = 0; point < eastM.length; point++) {
            start[cells.cellOf(eastM[point], northM[point]) + 1]++;
        }
        for (int cell = 0; cell < cells.numbers(); cell++) {
            start[cell + 1] += start[cell];
        }
        int[] next = Arrays.copyOf(start, start.length);
        this.points = new int[eastM.length];
        for (int point = 0; point < eastM.length; point++) {
            points[next[cells.cellOf(eastM[point], northM[point])]++] = point;
        }
        this.visitor = visitor;
        this.shower = this::show;
    }

    /** Takes one point that may be near; the same point may come more than once. */
    interface Visitor {
        void point(int number);
    }

    /** Shows every point within reach of the segment that ends at a vertex, and some that are further off. */
    void near(LineSet lines, int endVertex) {
        if (cells.span(lines, endVertex) > points.length + 64.0) {
            for (int point = 0; point < points.length; point++) {
                visitor.point(point);
            }
        } else {
            cells.walk(lines, endVertex, shower);
        }
    }

    private void show(int cell) {
        for (int i = start[cell]; i < start[cell + 1]; i++) {
            visitor.point(points[i]);
        }
    }
}
