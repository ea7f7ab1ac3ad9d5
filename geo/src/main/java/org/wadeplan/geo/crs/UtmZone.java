package org.wadeplan.geo.crs;

import java.util.Locale;

/**
 * The zone of the Universal Transverse Mercator grid that a place lies in.
 *
 * <p>Source: 60 zones of 6 degrees counted from 180 degrees west, with the wider zones of south-west Norway and
 * Svalbard: NGA.SIG.0012 (The Universal Grids), 2014, section 7; codes on WGS 84: EPSG 32601-32660 and 32701-32760.
 *
 * @param number 1 to 60
 * @param north whether it is north of the equator
 */
public record UtmZone(int number, boolean north) {

    public static UtmZone at(LonLat place) {
        double lonDeg = place.lonDeg();
        int zone = Math.min(60, (int) Math.floor((lonDeg + 180) / 6) + 1);
        if (place.latDeg() >= 56 && place.latDeg() < 64 && lonDeg >= 3 && lonDeg < 12) {
            zone = 32;
        }
        if (place.latDeg() >= 72 && place.latDeg() < 84 && lonDeg >= 0 && lonDeg < 42) {
            zone = lonDeg < 9 ? 31 : lonDeg < 21 ? 33 : lonDeg < 33 ? 35 : 37;
        }
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
