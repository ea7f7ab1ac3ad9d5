package org.wadeplan.planner.pack.page;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.geo.crs.LonLat;

/** Numbers as the pages write them: a point, never a locale's comma, and "not known" where there is none. */
public final class Figures {

    static final String UNKNOWN = "not known";

    private Figures() {}

    /** Without trailing zeros, to at most two decimal places: {@code 6}, {@code 0.45}. */
    public static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }

    static String known(OptionalDouble value, String unit) {
        return value.isPresent() ? plain(value.getAsDouble()) + " " + unit : UNKNOWN;
    }

    static String known(OptionalInt value, String unit) {
        return value.isPresent() ? value.getAsInt() + " " + unit : UNKNOWN;
    }

    /** Decimal degrees to five places, about a metre: {@code 46.13830 N, 20.95922 W}. */
    public static String degrees(LonLat at) {
        return String.format(
                Locale.ROOT,
                "%.5f %s, %.5f %s",
                Math.abs(at.latDeg()),
                northOrSouth(at),
                Math.abs(at.lonDeg()),
                eastOrWest(at));
    }

    /** Degrees and decimal minutes, what rescuers ask for: {@code 46° 08.298′ N, 20° 57.553′ W}. */
    public static String degreesMinutes(LonLat at) {
        return minutes(at.latDeg(), "%02d° %02d.%03d′ ") + northOrSouth(at) + ", "
                + minutes(at.lonDeg(), "%03d° %02d.%03d′ ") + eastOrWest(at);
    }

    /** Rounded once, in whole thousandths of a minute, so that 59.9996 becomes the next degree and never 60.000. */
    private static String minutes(double angleDeg, String format) {
        long thousandths = Math.round(Math.abs(angleDeg) * 60_000);
        return String.format(
                Locale.ROOT, format, thousandths / 60_000, thousandths % 60_000 / 1000, thousandths % 1000);
    }

    private static String northOrSouth(LonLat at) {
        return at.latDeg() < 0 ? "S" : "N";
    }

    private static String eastOrWest(LonLat at) {
        return at.lonDeg() < 0 ? "W" : "E";
    }
}
