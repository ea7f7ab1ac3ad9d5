package org.wadeplan.geo.terrain;

/** The heights of a rectangle of cells, row by row from the first. NaN where a cell has none: only this package sees that. */
final class GridCells {

    /** More than this many cells are not held: 64 million take 256 MB. */
    static final long MOST_CELLS = 64_000_000;

    private final GridFrame frame;
    private final float[] heights;

    /** The array is taken over, not copied. */
    GridCells(GridFrame frame, float[] heights) {
        this.frame = frame;
        this.heights = heights;
    }

    /** Where these cells lie. */
    GridFrame frame() {
        return frame;
    }

    int count() {
        return heights.length;
    }

    /** By number, row by row from the first. */
    float height(int cell) {
        return heights[cell];
    }

    float height(int column, int row) {
        return heights[row * frame.columns() + column];
    }

    long knownCount() {
        long known = 0;
        for (float height : heights) {
            if (!Float.isNaN(height)) {
                known++;
            }
        }
        return known;
    }

    float lowest() {
        float lowest = Float.NaN;
        for (float height : heights) {
            if (!(height >= lowest) && !Float.isNaN(height)) {
                lowest = height;
            }
        }
        return lowest;
    }

    float highest() {
        float highest = Float.NaN;
        for (float height : heights) {
            if (!(height <= highest) && !Float.isNaN(height)) {
                highest = height;
            }
        }
        return highest;
    }

    /** Every height multiplied, then shifted. */
    GridCells scaled(double factor, double offsetM) {
        if (factor == 1 && offsetM == 0) {
            return this;
        }
        float[] metres = new float[heights.length];
        for (int i = 0; i < heights.length; i++) {
            metres[i] = (float) (heights[i] * factor + offsetM);
        }
        return new GridCells(frame, metres);
    }
}
