package org.wadeplan.geo.crs;

/**
 * A place on WGS 84.
 *
 * @param lonDeg longitude in decimal degrees, -180 to 180, east positive
 * @param latDeg latitude in decimal degrees, -90 to 90, north positive
 */
public record LonLat(double lonDeg, double latDeg) {

    public LonLat {
        if (!(Math.abs(lonDeg) <= 180) || !(Math.abs(latDeg) <= 90)) {
            throw new IllegalArgumentException("Not a longitude and latitude in degrees: " + lonDeg + ", " + latDeg);
        }
    }
}
