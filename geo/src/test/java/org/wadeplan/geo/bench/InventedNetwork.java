package org.wadeplan.geo.bench;

import java.util.Arrays;

/**
 * Stream lines of an invented country, as large as wanted and always the same for a seed: about twelve vertices and half
 * a kilometre each, running downstream, meeting at exactly equal coordinates.
 *
 * <p>A channel begins where six cells of 130 m drain through one; lines end where channels meet. At one confluence in
 * fifty the larger channel runs on in one line, so that the tributary joins it at a vertex in its middle.
 */
public final class InventedNetwork {

    /** Lines for each cell of the grid, measured. */
    private static final double LINES_PER_CELL = 0.0752;

    private static final double CELL_M = 130;
    private static final double WEST_M = 1_000_000;
    private static final double SOUTH_M = 5_000_000;
    private static final int CHANNEL_CELLS = 6;
    private static final int BENDS = 3;
    private static final double THROUGH_SHARE = 0.02;

    private static final int USE_PLACE = Drainage.FIRST_FREE_USE;
    private static final int USE_THROUGH = USE_PLACE + 2;
    private static final int USE_BEND = USE_PLACE + 3;

    private final Noise noise;
    private final Drainage drainage;
    private final byte[] inflows;
    private double[] eastNorth = new double[256];
    private int vertices;

    /** Gets one line: x, y, x, y …, the number of its vertices, and the cells that drain through its end. */
    @FunctionalInterface
    public interface LineSink {
        void line(double[] eastNorth, int count, int cells);
    }

    /** @param lines about how many lines */
    public InventedNetwork(int lines, long seed) {
        this.noise = new Noise(seed);
        this.drainage = new Drainage((int) Math.max(16, Math.sqrt(lines / LINES_PER_CELL)), noise);
        this.inflows = new byte[drainage.side() * drainage.side()];
        for (int cell = 0; cell < inflows.length; cell++) {
            if (isChannel(cell) && drainage.receiver(cell) >= 0) {
                inflows[drainage.receiver(cell)]++;
            }
        }
    }

    /** Hands over every line, in the order of the cells where they begin. */
    public void each(LineSink sink) {
        for (int cell = 0; cell < inflows.length; cell++) {
            boolean begins = isChannel(cell) && inflows[cell] != 1 && !isThrough(cell);
            if (begins && drainage.receiver(cell) >= 0) {
                int last = follow(cell);
                sink.line(eastNorth, vertices, drainage.area(last));
            }
        }
    }

    private boolean isChannel(int cell) {
        return drainage.area(cell) >= CHANNEL_CELLS;
    }

    private boolean isThrough(int cell) {
        return inflows[cell] > 1 && drainage.receiver(cell) >= 0 && noise.of(cell, USE_THROUGH) < THROUGH_SHARE;
    }

    private int follow(int start) {
        vertices = 0;
        vertex(eastM(start), northM(start));
        int cell = start;
        do {
            int next = drainage.receiver(cell);
            bends(cell, next);
            vertex(eastM(next), northM(next));
            boolean goesOn = inflows[next] == 1 || (isThrough(next) && isLargestInflow(cell, next));
            cell = next;
            if (!goesOn) {
                return cell;
            }
        } while (drainage.receiver(cell) >= 0);
        return cell;
    }

    private boolean isLargestInflow(int cell, int into) {
        int side = drainage.side();
        int largest = -1;
        for (int up = -1; up <= 1; up++) {
            for (int right = -1; right <= 1; right++) {
                int other = into + up * side + right;
                boolean flowsIn = other >= 0 && other < inflows.length && drainage.receiver(other) == into;
                if (flowsIn && (largest < 0 || drainage.area(other) > drainage.area(largest))) {
                    largest = other;
                }
            }
        }
        return largest == cell;
    }

    private void bends(int from, int to) {
        double east = eastM(to) - eastM(from);
        double north = northM(to) - northM(from);
        for (int bend = 1; bend <= BENDS; bend++) {
            double along = bend / (BENDS + 1.0);
            double aside = 0.15 * noise.around(from, USE_BEND + bend);
            vertex(eastM(from) + along * east - aside * north, northM(from) + along * north + aside * east);
        }
    }

    private double eastM(int cell) {
        return WEST_M + CELL_M * (cell % drainage.side() + 0.3 * noise.around(cell, USE_PLACE));
    }

    private double northM(int cell) {
        int row = cell / drainage.side();
        return SOUTH_M + CELL_M * (row + 0.3 * noise.around(cell, USE_PLACE + 1));
    }

    private void vertex(double eastM, double northM) {
        if (2 * vertices + 2 > eastNorth.length) {
            eastNorth = Arrays.copyOf(eastNorth, 2 * eastNorth.length);
        }
        eastNorth[2 * vertices] = eastM;
        eastNorth[2 * vertices++ + 1] = northM;
    }
}
