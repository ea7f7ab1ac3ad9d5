package org.wadeplan.geo.terrain;

import java.util.Arrays;

/**
 * The falling course nearest to a row of heights.
 *
 * <p>Water runs down; heights read off a grid along a stream line go up and down. The fit is the row that never rises and has
 * the least sum of squared differences, found by pooling neighbours that stand in the wrong order until none do (pool adjacent
 * violators; Barlow, Bartholomew, Bremner and Brunk 1972, Statistical Inference under Order Restrictions, from memory). Where
 * every height is off by at most d from a falling course, so is the fit.
 */
final class MonotoneFit {

    private MonotoneFit() {}

    /** Never rising from the first to the last, as long as the row that was given. */
    static double[] falling(double[] heights) {
        double[] mean = new double[heights.length];
        int[] end = new int[heights.length];
        int blocks = 0;
        for (int i = 0; i < heights.length; i++) {
            mean[blocks] = heights[i];
            end[blocks] = i + 1;
            while (blocks > 0 && mean[blocks - 1] < mean[blocks]) {
                blocks = pooled(mean, end, blocks);
            }
            blocks++;
        }
        double[] fit = new double[heights.length];
        for (int block = 0; block < blocks; block++) {
            Arrays.fill(fit, start(end, block), end[block], mean[block]);
        }
        return fit;
    }

    /** Joins a block to the one before it and returns that one's number. */
    private static int pooled(double[] mean, int[] end, int block) {
        int before = end[block - 1] - start(end, block - 1);
        int behind = end[block] - end[block - 1];
        mean[block - 1] = (mean[block - 1] * before + mean[block] * behind) / (before + behind);
        end[block - 1] = end[block];
        return block - 1;
    }

    private static int start(int[] end, int block) {
        return block == 0 ? 0 : end[block - 1];
    }
}
