package org.wadeplan.geo.lines;

import java.util.Arrays;

/**
 * Boxes waiting to be opened, the nearest first: a binary heap of whole numbers that hold distance and box together.
 *
 * <p>The square of the distance is kept in single precision, rounded down, so that it stays a lower bound.
 */
final class BoxQueue {

    private static final double ROUNDED_DOWN = 1 - 2e-7;

    private long[] heap = new long[64];
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    /** The square of the nearest box's distance, or a little less. */
    double leastM2() {
        return Float.intBitsToFloat((int) (heap[0] >>> 32));
    }

    void add(double distanceM2, int box) {
        if (size == heap.length) {
            heap = Arrays.copyOf(heap, 2 * size);
        }
        long added = (long) Float.floatToRawIntBits((float) (distanceM2 * ROUNDED_DOWN)) << 32 | box;
        int hole = size++;
        while (hole > 0 && heap[(hole - 1) >> 1] > added) {
            heap[hole] = heap[(hole - 1) >> 1];
            hole = (hole - 1) >> 1;
        }
        heap[hole] = added;
    }

    /** Takes the nearest box out. */
    int take() {
        int nearest = (int) heap[0];
        long last = heap[--size];
        int hole = 0;
        for (int child = 1; child < size; child = 2 * hole + 1) {
            if (child + 1 < size && heap[child + 1] < heap[child]) {
                child++;
            }
            if (heap[child] >= last) {
                break;
            }
            heap[hole] = heap[child];
            hole = child;
        }
        heap[hole] = last;
        return nearest;
    }
}
