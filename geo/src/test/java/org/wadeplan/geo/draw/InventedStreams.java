package org.wadeplan.geo.draw;

import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

/**
 * An invented drainage net in a square of 32 km: each cell of a lattice drains to one of its two lower
 * neighbours at random, and cells that few others drain to are left out. Scheidegger's model (from memory).
 */
final class InventedStreams {

    private static final int CELLS = 32;
    private static final int CELL_M = 1000;
    private static final int LEAST_CELLS = 4;

    private InventedStreams() {}

    /** One line a cell, running downstream; the name ends in the number of cells that drain through it. */
    static LineSet lines(long seed) {
        SplitMix64 random = new SplitMix64(seed);
        int[][] to = new int[CELLS][CELLS];
        int[][] area = new int[CELLS + 1][CELLS];
        double[][] eastM = new double[CELLS + 1][CELLS];
        double[][] northM = new double[CELLS + 1][CELLS];
        for (int row = 0; row <= CELLS; row++) {
            for (int column = 0; column < CELLS; column++) {
                eastM[row][column] = 500_000 + column * CELL_M + random.below(700);
                northM[row][column] = 5_100_000 - row * CELL_M + random.below(700);
            }
        }
        for (int row = 0; row < CELLS; row++) {
            for (int column = 0; column < CELLS; column++) {
                area[row][column]++;
                to[row][column] = Math.min(CELLS - 1, column + (int) random.below(2));
                area[row + 1][to[row][column]] += area[row][column];
            }
        }
        LineSetBuilder lines = new LineSetBuilder();
        for (int row = 0; row < CELLS; row++) {
            for (int column = 0; column < CELLS; column++) {
                if (area[row][column] >= LEAST_CELLS) {
                    int below = to[row][column];
                    lines.add(
                            "L" + row + "-" + column + "-" + area[row][column],
                            new double[] {
                                eastM[row][column], northM[row][column], eastM[row + 1][below], northM[row + 1][below]
                            },
                            2);
                }
            }
        }
        return lines.build();
    }
}
