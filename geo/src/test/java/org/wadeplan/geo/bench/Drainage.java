package org.wadeplan.geo.bench;

import java.util.Arrays;

/**
 * Where every cell of an invented hilly square drains to, and how many cells drain through it.
 *
 * <p>Water is followed from the border inwards, always over the lowest cell on the shore of what was reached so far; a
 * cell drains to the one from which it was reached. A hollow is entered at its lowest gap and then run through to its
 * deepest place first, so its channels meet in the bottom and leave as one, as if the gap had been cut by the stream.
 * Source of the way: Barnes, Lehman and Mulla 2014, Priority-flood, in its carving form.
 */
final class Drainage {

    /** Use numbers of the noise up to this one belong to the surface. */
    static final int FIRST_FREE_USE = 8;

    private static final double[] WEIGHTS = {1, 0.35, 0.12, 0.05, 0.03};

    private final int side;
    private final int[] receiver;
    private final int[] area;

    /**
     * @param side cells along each side
     * @param noise of the surface
     */
    Drainage(int side, Noise noise) {
        this.side = side;
        int cells = Math.multiplyExact(side, side);
        this.receiver = new int[cells];
        Arrays.fill(receiver, Integer.MIN_VALUE);
        int[] order = flooded(surface(side, noise));
        this.area = new int[cells];
        for (int i = cells - 1; i >= 0; i--) {
            int cell = order[i];
            area[cell]++;
            if (receiver[cell] >= 0) {
                area[receiver[cell]] += area[cell];
            }
        }
    }

    int side() {
        return side;
    }

    /** The cell that a cell drains to; negative at the border, where water leaves. */
    int receiver(int cell) {
        return receiver[cell];
    }

    /** How many cells drain through a cell, itself included. */
    int area(int cell) {
        return area[cell];
    }

    private static float[] surface(int side, Noise noise) {
        double[] wavelengths = {side / 4.0, side / 16.0, side / 64.0, 8, 2};
        float[] heights = new float[side * side];
        for (int cell = 0; cell < heights.length; cell++) {
            int row = cell / side;
            double height = 0;
            for (int i = 0; i < WEIGHTS.length; i++) {
                height += WEIGHTS[i] * noise.hills(cell % side, row, Math.max(2, wavelengths[i]), i);
            }
            heights[cell] = (float) (height + 1e-4 * noise.of(cell, WEIGHTS.length));
        }
        return heights;
    }

    /** Fills in the receivers; gives the cells in the order in which they were reached. */
    private int[] flooded(float[] heights) {
        int[] order = new int[heights.length];
        LowestFirst shore = new LowestFirst();
        for (int i = 0; i < side; i++) {
            for (int cell : new int[] {i, (side - 1) * side + i, i * side, i * side + side - 1}) {
                reach(cell, -1, heights, shore);
            }
        }
        int reached = 0;
        while (!shore.isEmpty()) {
            int cell = shore.take();
            order[reached++] = cell;
            int column = cell % side;
            int row = cell / side;
            for (int up = row == 0 ? 0 : -1; up <= (row == side - 1 ? 0 : 1); up++) {
                for (int right = column == 0 ? 0 : -1; right <= (column == side - 1 ? 0 : 1); right++) {
                    reach(cell + up * side + right, cell, heights, shore);
                }
            }
        }
        return order;
    }

    private void reach(int cell, int from, float[] heights, LowestFirst shore) {
        if (receiver[cell] == Integer.MIN_VALUE) {
            receiver[cell] = from;
            shore.add(heights[cell], cell);
        }
    }

    /** Cells by height, in a heap of fours. */
    private static final class LowestFirst {

        private long[] heap = new long[1 << 16];
        private int size;

        boolean isEmpty() {
            return size == 0;
        }

        void add(float height, int cell) {
            if (size == heap.length) {
                heap = Arrays.copyOf(heap, 2 * size);
            }
            int bits = Float.floatToIntBits(height);
            long added = (long) (bits ^ ((bits >> 31) & Integer.MAX_VALUE)) << 32 | cell;
            int hole = size++;
            while (hole > 0 && heap[(hole - 1) >> 2] > added) {
                heap[hole] = heap[(hole - 1) >> 2];
                hole = (hole - 1) >> 2;
            }
            heap[hole] = added;
        }

        int take() {
            int lowest = (int) heap[0];
            long last = heap[--size];
            int hole = 0;
            for (int first = 1; first < size; first = 4 * hole + 1) {
                int least = first;
                for (int child = first + 1; child < Math.min(first + 4, size); child++) {
                    least = heap[child] < heap[least] ? child : least;
                }
                if (heap[least] >= last) {
                    break;
                }
                heap[hole] = heap[least];
                hole = least;
            }
            heap[hole] = last;
            return lowest;
        }
    }
}
