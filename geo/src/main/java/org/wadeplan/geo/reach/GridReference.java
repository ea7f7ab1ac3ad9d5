package org.wadeplan.geo.reach;

import java.util.Locale;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * A place in the three forms that crews and rescuers read out.
 *
 * @param at in the round's metric system
 * @param lonLat the same place on WGS 84
 * @param uncertaintyM how far off it may be on the ground, metres; handhelds are good to 2-3 m in the open and 5-10 m
 *     under trees
 */
public record GridReference(MetricPoint at, LonLat lonLat, double uncertaintyM) {

    public GridReference {
        if (!(uncertaintyM >= 0)) {
            throw new IllegalArgumentException("An uncertainty is 0 m or more, not " + uncertaintyM);
        }
    }

    public static GridReference of(Stake stake, double uncertaintyM) {
        return new GridReference(stake.at(), stake.lonLat(), uncertaintyM);
    }

    /** Whole metres: {@code E 503150 N 5109420 ± 10 m}. The page must name the system beside it. */
    public String eastNorth() {
        return String.format(
                Locale.ROOT, "E %.0f N %.0f \u00b1 %.0f m", at.eastM(), at.northM(), Math.ceil(uncertaintyM));
    }

    /** Decimal degrees to 5 places, about 1 m, latitude first as rescuers say it: {@code 46.02016° N, 20.83980° W}. */
    public String decimalDegrees() {
        return String.format(
                Locale.ROOT,
                "%.5f\u00b0 %s, %.5f\u00b0 %s",
                Math.abs(lonLat.latDeg()),
                northOrSouth(),
                Math.abs(lonLat.lonDeg()),
                eastOrWest());
    }

    /** Degrees and decimal minutes to 3 places, about 2 m: {@code 46° 01.210′ N, 020° 50.388′ W}. */
    public String degreesMinutes() {
        return degreesMinutes(lonLat.latDeg(), 2) + " " + northOrSouth() + ", " + degreesMinutes(lonLat.lonDeg(), 3)
                + " " + eastOrWest();
    }

    /** In thousandths of a minute first, so that 59.9996 minutes become the next degree and never read 60.000. */
    private static String degreesMinutes(double angleDeg, int digits) {
        long thousandths = Math.round(Math.abs(angleDeg) * 60_000);
        return String.format(
                Locale.ROOT,
                "%0" + digits + "d\u00b0 %02d.%03d\u2032",
                thousandths / 60_000,
                thousandths % 60_000 / 1000,
                thousandths % 1000);
    }

    private String northOrSouth() {
        return lonLat.latDeg() < 0 ? "S" : "N";
    }

    private String eastOrWest() {
        return lonLat.lonDeg() < 0 ? "W" : "E";
    }
}
