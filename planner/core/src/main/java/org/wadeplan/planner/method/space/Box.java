package org.wadeplan.planner.method.space;

import java.util.Arrays;

/** Cases that some slices of each column hold together. Never changed once made. */
public final class Box {

    private final int[][] columns;

    Box(int[][] columns) {
        this.columns = columns;
    }

    int[] runs(int column) {
        return columns[column];
    }

    int width() {
        return columns.length;
    }

    /** Whether no case lies in it. */
    public boolean isVoid() {
        for (int[] runs : columns) {
            if (runs.length == 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether one column holds no slice, so that no case lies in the box. */
    public boolean isVoidIn(int column) {
        return columns[column].length == 0;
    }

    /** Whether the two have a slice of one column in common. */
    public boolean meetsIn(int column, Box other) {
        return Runs.intersects(columns[column], other.columns[column]);
    }

    /** This box with other slices in one column. */
    Box with(int column, int[] runs) {
        int[][] changed = columns.clone();
        changed[column] = runs;
        return new Box(changed);
    }

    public boolean intersects(Box other) {
        for (int column = 0; column < columns.length; column++) {
            if (!Runs.intersects(columns[column], other.columns[column])) {
                return false;
            }
        }
        return true;
    }

    public boolean covers(Box inner) {
        for (int column = 0; column < columns.length; column++) {
            if (!Runs.covers(columns[column], inner.columns[column])) {
                return false;
            }
        }
        return true;
    }

    /** What lies in both; a box without cases where nothing does. */
    public Box intersect(Box other) {
        int[][] both = new int[columns.length][];
        for (int column = 0; column < columns.length; column++) {
            both[column] = Runs.intersect(columns[column], other.columns[column]);
        }
        return new Box(both);
    }

    /** Whether one column of both boxes holds the same slices. */
    public boolean sameIn(int column, Box other) {
        return Arrays.equals(columns[column], other.columns[column]);
    }

    /** Whether one column of this box covers that of the other. */
    public boolean coversIn(int column, Box other) {
        return Runs.covers(columns[column], other.columns[column]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Box box && Arrays.deepEquals(columns, box.columns);
    }

    @Override
    public int hashCode() {
        return Arrays.deepHashCode(columns);
    }
}
