package org.wadeplan.geo.io;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.crs.Reprojection;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Turns the geometry member of one feature into a shape in the round's system, or says why it cannot. */
final class GeoJsonShape {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final CoordinateSystem round;
    private final SourcePlace place;
    private final Optional<Reprojection> stated;
    private final List<Problem> problems = new ArrayList<>();

    /** @param stated the way from the system that the file states; empty for longitude and latitude on WGS 84 */
    GeoJsonShape(CoordinateSystem round, SourcePlace place, Optional<Reprojection> stated) {
        this.round = round;
        this.place = place;
        this.stated = stated;
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** Empty where there is no geometry, and where it is at fault: {@link #problems} then says so. */
    Optional<Geometry> read(JsonNode geometry) {
        if (geometry.isNull() || geometry.isMissingNode()) {
            return Optional.empty();
        }
        try {
            Geometry shape = shape(geometry.path("type").asText(), geometry.path("coordinates"));
            return Optional.of(stated.map(way -> brought(way, shape)).orElse(shape));
        } catch (Refused refused) {
            problems.add(refused.problem);
        } catch (IllegalArgumentException wrongShape) {
            problems.add(unreadable());
        }
        return Optional.empty();
    }

    private Geometry brought(Reprojection way, Geometry shape) {
        try {
            return way.apply(shape);
        } catch (IllegalArgumentException farAway) {
            Coordinate first = shape.getCoordinate();
            throw new Refused(outOfArea("coordinates " + plain(first.x) + ", " + plain(first.y)));
        }
    }

    private Problem unreadable() {
        return Problem.error(
                "geometry-unreadable",
                place,
                "its coordinates do not make the shape it says it is",
                "a Point, LineString or Polygon, or a Multi of these, as RFC 7946 has them",
                "draw or export this feature again");
    }

    private Geometry shape(String type, JsonNode coordinates) throws Refused {
        return switch (type) {
            case "Point" -> SHAPES.createPoint(position(coordinates));
            case "LineString" -> line(coordinates);
            case "Polygon" -> polygon(coordinates);
            case "MultiPoint" ->
                SHAPES.createMultiPoint(each(coordinates, part -> SHAPES.createPoint(position(part)))
                        .toArray(new Point[0]));
            case "MultiLineString" ->
                SHAPES.createMultiLineString(each(coordinates, this::line).toArray(new LineString[0]));
            case "MultiPolygon" ->
                SHAPES.createMultiPolygon(each(coordinates, this::polygon).toArray(new Polygon[0]));
            default -> throw new Refused(unreadable());
        };
    }

    private static <T> List<T> each(JsonNode parts, Function<JsonNode, T> make) {
        List<T> made = new ArrayList<>();
        parts.forEach(part -> made.add(make.apply(part)));
        return made;
    }

    private LineString line(JsonNode positions) {
        return SHAPES.createLineString(each(positions, this::position).toArray(new Coordinate[0]));
    }

    private Polygon polygon(JsonNode rings) {
        List<LinearRing> made = each(
                rings,
                ring -> SHAPES.createLinearRing(each(ring, this::position).toArray(new Coordinate[0])));
        if (made.isEmpty()) {
            return SHAPES.createPolygon();
        }
        return SHAPES.createPolygon(made.get(0), made.subList(1, made.size()).toArray(new LinearRing[0]));
    }

    private Coordinate position(JsonNode numbers) {
        if (numbers.size() < 2
                || !numbers.path(0).isNumber()
                || !numbers.path(1).isNumber()) {
            throw new Refused(unreadable());
        }
        double lonDeg = numbers.path(0).doubleValue();
        double latDeg = numbers.path(1).doubleValue();
        if (stated.isPresent() && Double.isFinite(lonDeg) && Double.isFinite(latDeg)) {
            return new Coordinate(lonDeg, latDeg);
        }
        if (!(Math.abs(lonDeg) <= 180) || !(Math.abs(latDeg) <= 90)) {
            throw new Refused(notDegrees(lonDeg, latDeg));
        }
        try {
            MetricPoint at = round.toMetric(new LonLat(lonDeg, latDeg));
            return new Coordinate(at.eastM(), at.northM());
        } catch (IllegalArgumentException farAway) {
            throw new Refused(outOfArea("longitude " + plain(lonDeg) + ", latitude " + plain(latDeg)));
        }
    }

    private Problem outOfArea(String what) {
        return Problem.error(
                "place-out-of-area",
                place,
                what + " cannot be shown in " + round.name(),
                "places in the round's area",
                "check that longitude and latitude are not swapped");
    }

    private Problem notDegrees(double first, double second) {
        Optional<CoordinateSystem> probably = CoordinateSystem.likely(first, second, Optional.of(round));
        Optional<CoordinateSystem> swapped = CoordinateSystem.likely(second, first, Optional.of(round));
        String guess = probably.map(system -> ": file is probably " + system.code())
                .or(() -> swapped.map(system -> ": file is probably " + system.code() + " with northing first"))
                .orElse(": file is probably in metres of a system other than the round's " + round.code());
        return Problem.error(
                "coordinates-not-degrees",
                place,
                "coordinates " + plain(first) + ", " + plain(second) + " are outside -180\u2026180/-90\u202690" + guess,
                "longitude and latitude in decimal degrees on WGS 84, as RFC 7946 has it",
                "export it again as GeoJSON in WGS 84 (EPSG:4326), or as a GeoPackage, which may be in metres");
    }

    static String plain(double number) {
        return Double.isFinite(number)
                ? BigDecimal.valueOf(number).stripTrailingZeros().toPlainString()
                : Double.toString(number);
    }

    /** Leaves the reading of one shape; never leaves this class. */
    private static final class Refused extends RuntimeException {
        private final transient Problem problem;

        Refused(Problem problem) {
            super(problem.code(), null, false, false);
            this.problem = problem;
        }
    }
}
