package org.wadeplan.planner.files;

import java.util.Locale;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;
import org.wadeplan.geo.crs.LonLat;

/** Distances over ground, and how to say them without false precision. */
final class Distances {

    private Distances() {}

    /** Along the geodesic on WGS 84 (Karney 2013), metres: right across an ocean too, where a grid is not. */
    static double groundM(LonLat a, LonLat b) {
        return Geodesic.WGS84.Inverse(a.latDeg(), a.lonDeg(), b.latDeg(), b.lonDeg(), GeodesicMask.DISTANCE).s12;
    }

    /** {@code 240 m}, {@code 3.4 km}, {@code about 340 km}, {@code about 10 000 km}. */
    static String words(double distanceM) {
        if (distanceM < 995) {
            return Math.round(distanceM / 10) * 10 + " m";
        }
        double km = distanceM / 1000;
        if (km < 10) {
            return String.format(Locale.ROOT, "%.1f km", km);
        }
        long rounded = km < 1000 ? Math.round(km) : Math.round(km / 1000) * 1000;
        String digits = String.format(Locale.ROOT, "%,d", rounded).replace(',', ' ');
        return "about " + digits + " km";
    }
}
