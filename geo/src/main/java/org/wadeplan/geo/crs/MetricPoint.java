package org.wadeplan.geo.crs;

/**
 * A place in the round's metric coordinate system.
 *
 * @param eastM easting in metres
 * @param northM northing in metres
 */
public record MetricPoint(double eastM, double northM) {

    public MetricPoint {
        if (!Double.isFinite(eastM) || !Double.isFinite(northM)) {
            throw new IllegalArgumentException("A place needs finite coordinates, not " + eastM + ", " + northM);
        }
    }

    /** Straight-line distance on the grid, in metres. */
    public double distanceM(MetricPoint other) {
        return Math.hypot(eastM - other.eastM, northM - other.northM);
    }
}
