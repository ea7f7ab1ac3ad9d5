package org.wadeplan.geo.terrain;

/**
 * Heights with what can be told from them.
 *
 * @param elevation heights of the ground
 * @param cellM side of the cells that they come from, metres on the ground, above 0
 * @param verticalStepM smallest difference of height that they can hold, metres, above 0
 */
public record Ground(Elevation elevation, double cellM, double verticalStepM) {

    /** For rounds without a grid. */
    public static final Ground UNKNOWN = new Ground(Elevation.UNKNOWN, 1, 1);

    public Ground {
        if (!(cellM > 0) || !(verticalStepM > 0)) {
            throw new IllegalArgumentException(
                    "Ground needs a cell size and a vertical step above 0, not " + cellM + " and " + verticalStepM);
        }
    }

    /** Whether there is a grid at all. */
    public boolean isKnown() {
        return elevation != Elevation.UNKNOWN;
    }
}
