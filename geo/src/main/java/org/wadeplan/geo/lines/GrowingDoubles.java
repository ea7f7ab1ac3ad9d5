package org.wadeplan.geo.lines;

import java.util.ArrayList;
import java.util.List;

/** A long row of numbers that grows block by block, so that nothing is ever copied while it does. */
final class GrowingDoubles {

    private static final int BLOCK_BITS = 16;
    private static final int BLOCK = 1 << BLOCK_BITS;

    private final List<double[]> blocks = new ArrayList<>();

    void set(int at, double value) {
        int block = at >> BLOCK_BITS;
        if (block == blocks.size()) {
            blocks.add(new double[BLOCK]);
        }
        blocks.get(block)[at & (BLOCK - 1)] = value;
    }

    /** The first so many in one array; the row is empty afterwards, so that both never need memory in full. */
    double[] drained(int count) {
        double[] all = new double[count];
        for (int block = 0; block < blocks.size(); block++) {
            int from = block << BLOCK_BITS;
            System.arraycopy(blocks.get(block), 0, all, from, Math.max(0, Math.min(BLOCK, count - from)));
        }
        blocks.clear();
        return all;
    }
}
