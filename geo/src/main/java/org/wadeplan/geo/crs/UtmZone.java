package org.wadeplan.geo.crs;

import java.util.Locale;

/**
 * The zone of the Universal Transverse Mercator grid that a place lies in.
 *
 * <p>Source: 60 zones of 6 degrees counted from 180 degrees west, NGA.SIG.0012 (The Universal Grids), 2014, section 7;
 * codes on WGS 84: EPSG 32601-32660 and 32701-32760. The wider zones of south-west Norway and Svalbard are left out, as in
 * the areas of use of those codes.
 *
 * @param number 1 to 60
 * @param north whether it is north of the equator
 */
public record UtmZone(int number, boolean north) {

    public static UtmZone at(LonLat place) {
        double lonDeg = place.lonDeg();
        int zone = Math.min(60, (int) Math.floor((lonDeg + 180) / 6) + 1);
        return new UtmZone(zone, place.latDeg() >= 0);
    }

    /** {@code EPSG:32617} */
    public String code() {
        return String.format(Locale.ROOT, "EPSG:32%d%02d", north ? 6 : 7, number);
    }

    /** {@code UTM zone 17N (EPSG:32617)} */
    public String words() {
        return "UTM zone " + number + (north ? "N" : "S") + " (" + code() + ")";
    }
}
