package org.wadeplan.geo.io;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Metadata;
import io.jenetics.jpx.Route;
import io.jenetics.jpx.WayPoint;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Makes GPX 1.1 documents, whose names stay whole and different on handhelds that cut them after 10 characters. */
public final class GpxWriter {

    /** Longest name that older handhelds show whole, in characters. */
    public static final int LONGEST_NAME = 10;

    /** About 1 cm. */
    private static final int DECIMALS = 7;

    private GpxWriter() {}

    /**
     * The document as text, to be written with {@link WholeFile}.
     *
     * @param place the file to be, for problems
     * @return the text; or a problem for every name that is too long, and for all that clash, in any mix of upper and
     *     lower case, once cut to 10 characters
     */
    public static Checked<String> document(GpxContent content, SourcePlace place) {
        List<Problem> problems = new ArrayList<>();
        problems.addAll(nameProblems(
                content.waypoints().stream().map(GpxContent.Waypoint::name).toList(), "waypoint", place));
        problems.addAll(nameProblems(
                content.routes().stream().map(GpxContent.Route::name).toList(), "route", place));
        return problems.isEmpty() ? Checked.of(text(content)) : Checked.failed(problems);
    }

    private static List<Problem> nameProblems(List<String> names, String kind, SourcePlace place) {
        List<Problem> problems = new ArrayList<>();
        Map<String, List<String>> byShown = new TreeMap<>();
        for (String name : names) {
            byShown.computeIfAbsent(shown(name), cut -> new ArrayList<>()).add(name);
            if (name.length() > LONGEST_NAME) {
                problems.add(Problem.error(
                        "gpx-name-long",
                        place.row(kind + " " + name),
                        "the name \"" + name + "\" has " + name.length() + " characters",
                        "at most " + LONGEST_NAME + ": older handhelds cut the rest off",
                        "shorten the site's short code"));
            }
        }
        byShown.forEach((cut, same) -> {
            if (same.size() > 1) {
                problems.add(Problem.error(
                        "gpx-name-clash",
                        place.row(kind + " " + cut),
                        "the names " + String.join(", ", same) + " would all be shown as " + cut,
                        "names that differ in their first " + LONGEST_NAME + " characters",
                        "give the sites short codes that differ"));
            }
        });
        return problems;
    }

    private static String shown(String name) {
        return name.substring(0, Math.min(LONGEST_NAME, name.length())).toUpperCase(Locale.ROOT);
    }

    private static String text(GpxContent content) {
        GPX.Builder gpx = GPX.builder("Wadeplan")
                .metadata(Metadata.builder()
                        .name(content.name())
                        .desc(content.description())
                        .time(content.created())
                        .build());
        content.waypoints().forEach(waypoint -> gpx.addWayPoint(point(waypoint, "Flag, Blue")));
        content.routes().forEach(route -> gpx.addRoute(route(route)));
        return GPX.Writer.of(new GPX.Writer.Indent("  "), DECIMALS).toString(gpx.build());
    }

    private static Route route(GpxContent.Route route) {
        return Route.builder()
                .name(route.name())
                .desc(route.description())
                .points(route.stops().stream()
                        .map(stop -> point(stop, "Waypoint"))
                        .toList())
                .build();
    }

    private static WayPoint point(GpxContent.Waypoint waypoint, String symbol) {
        return WayPoint.builder()
                .lat(rounded(waypoint.at().latDeg()))
                .lon(west(rounded(waypoint.at().lonDeg())))
                .name(waypoint.name())
                .desc(waypoint.description())
                .sym(symbol)
                .build();
    }

    /** The format has the 180th meridian as -180 and does not allow 180. */
    private static double west(double lonDeg) {
        return lonDeg >= 180 ? -180 : lonDeg;
    }

    private static double rounded(double degrees) {
        return BigDecimal.valueOf(degrees)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .doubleValue();
    }
}
