package org.wadeplan.geo.terrain;

/** How finely a grid tells heights apart, read from the heights themselves. */
final class VerticalStep {

    /** For grids whose heights follow no step: what a float of some thousand metres can hold. */
    static final double FINEST_M = 0.01;

    private static final double[] USUAL_M = {1, 0.5, 0.1, 0.05, FINEST_M};
    private static final int MOST_LOOKED_AT = 200_000;

    /** A float of a thousand metres is exact to 0.00006 m, so a hundredth of a step may be off by that. */
    private static final double ROUNDING_M = 0.0005;

    private VerticalStep() {}

    /** The largest usual step of which every height is a multiple; {@link #FINEST_M} where there is none. */
    static double measuredM(GridCells cells) {
        for (double stepM : USUAL_M) {
            if (allMultiples(cells, stepM)) {
                return stepM;
            }
        }
        return FINEST_M;
    }

    private static boolean allMultiples(GridCells cells, double stepM) {
        int stride = Math.max(1, cells.count() / MOST_LOOKED_AT);
        for (int i = 0; i < cells.count(); i += stride) {
            double height = cells.height(i);
            if (Math.abs(height - Math.rint(height / stepM) * stepM) > ROUNDING_M) {
                return false;
            }
        }
        return true;
    }
}
