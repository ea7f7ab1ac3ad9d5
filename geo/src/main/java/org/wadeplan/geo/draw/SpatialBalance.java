package org.wadeplan.geo.draw;

/**
 * How evenly drawn units lie in their frame.
 *
 * <p>Every unit of the frame belongs to the drawn unit nearest to it; v is the sum of the inclusion probabilities that
 * fall to a drawn unit, 1 where each stands for its fair part. B is the mean of (v - 1) squared over the drawn. Source:
 * Stevens & Olsen 2004, Spatially balanced sampling of natural resources, J. Am. Stat. Assoc. 99:262-278.
 */
final class SpatialBalance {

    private SpatialBalance() {}

    /**
     * The figure B: 0 is perfect.
     *
     * @param drawn numbers of the drawn units, at least one
     * @param probability of each unit of the frame
     */
    static double of(int[] drawn, double[] eastM, double[] northM, double[] probability) {
        double[] drawnEastM = new double[drawn.length];
        double[] drawnNorthM = new double[drawn.length];
        for (int i = 0; i < drawn.length; i++) {
            drawnEastM[i] = eastM[drawn[i]];
            drawnNorthM[i] = northM[drawn[i]];
        }
        LivingTree tree = new LivingTree(drawnEastM, drawnNorthM);
        double[] falls = new double[drawn.length];
        for (int unit = 0; unit < eastM.length; unit++) {
            falls[tree.nearest(eastM[unit], northM[unit])] += probability[unit];
        }
        double sum = 0;
        for (double fallen : falls) {
            sum += (fallen - 1) * (fallen - 1);
        }
        return sum / drawn.length;
    }
}
