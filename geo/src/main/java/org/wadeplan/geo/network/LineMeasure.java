package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * Chainage along one line: metres from its first vertex, measured along its segments in the plane.
 *
 * <p>A place is put onto the nearest point of the nearest segment, never onto the nearest vertex. Where two points of the
 * line are equally near, the one with the smaller chainage wins. Nothing is clamped: a chainage outside the line is an
 * error. Immutable.
 */
public final class LineMeasure {

    /** Sums of lengths differ by this much with the order of adding up, in metres; it is no place outside the line. */
    private static final double ROUNDING_M = 1e-6;

    private final LineString line;
    private final Coordinate[] vertices;
    private final double[] chainageM;

    /**
     * Measures a line.
     *
     * @throws IllegalArgumentException where the line has no length
     */
    public LineMeasure(LineString line) {
        this.line = line;
        this.vertices = line.getCoordinates();
        this.chainageM = new double[vertices.length];
        for (int i = 1; i < vertices.length; i++) {
            chainageM[i] = chainageM[i - 1] + vertices[i - 1].distance(vertices[i]);
        }
        if (!(lengthM() > 0)) {
            throw new IllegalArgumentException("A line without length cannot be measured along");
        }
    }

    /**
     * Where a place falls on the line.
     *
     * @param chainageM metres from the line's first vertex
     * @param distanceM metres from the place to the line, straight
     * @param at the point on the line
     * @param leftM the same distance, negative where the place lies right of the line's direction
     */
    public record Foot(double chainageM, double distanceM, MetricPoint at, double leftM) {}

    public double lengthM() {
        return chainageM.length == 0 ? 0 : chainageM[chainageM.length - 1];
    }

    /** The nearest point of the line. */
    public Foot foot(MetricPoint place) {
        Foot best = footOnSegment(1, place);
        for (int i = 2; i < vertices.length; i++) {
            Foot foot = footOnSegment(i, place);
            if (foot.distanceM() < best.distanceM()) {
                best = foot;
            }
        }
        return best;
    }

    private Foot footOnSegment(int end, MetricPoint place) {
        Coordinate from = vertices[end - 1];
        Coordinate to = vertices[end];
        double dx = to.x - from.x;
        double dy = to.y - from.y;
        double px = place.eastM() - from.x;
        double py = place.northM() - from.y;
        double squared = dx * dx + dy * dy;
        double share = squared == 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / squared));
        MetricPoint at = new MetricPoint(from.x + share * dx, from.y + share * dy);
        double distanceM = at.distanceM(place);
        double side = dx * py - dy * px;
        double chainage = chainageM[end - 1] + share * (chainageM[end] - chainageM[end - 1]);
        return new Foot(chainage, distanceM, at, side < 0 ? -distanceM : distanceM);
    }

    /**
     * The point at a chainage.
     *
     * @throws IllegalArgumentException where the chainage lies outside the line
     */
    public MetricPoint at(double chainage) {
        double onLineM = onLine(chainage);
        int end = segmentEnd(onLineM);
        double share = shareOf(onLineM, end);
        Coordinate from = vertices[end - 1];
        Coordinate to = vertices[end];
        return new MetricPoint(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    }

    /**
     * A point beside the line, square to its direction there.
     *
     * @param leftM metres to the left of the line's direction; negative for the right
     * @throws IllegalArgumentException where the chainage lies outside the line
     */
    public MetricPoint beside(double chainage, double leftM) {
        int end = segmentEnd(onLine(chainage));
        double length = chainageM[end] - chainageM[end - 1];
        double dx = (vertices[end].x - vertices[end - 1].x) / length;
        double dy = (vertices[end].y - vertices[end - 1].y) / length;
        MetricPoint on = at(chainage);
        return new MetricPoint(on.eastM() - dy * leftM, on.northM() + dx * leftM);
    }

    /**
     * The stretch between two chainages, running from the first to the second, so backwards where the first is larger.
     *
     * @throws IllegalArgumentException where one lies outside the line or both are the same
     */
    public LineString between(double fromM, double toM) {
        double lowM = Math.min(fromM, toM);
        double highM = Math.max(fromM, toM);
        List<Coordinate> stretch = new ArrayList<>();
        stretch.add(coordinate(at(lowM)));
        for (int i = 0; i < vertices.length; i++) {
            if (chainageM[i] > lowM && chainageM[i] < highM) {
                stretch.add(vertices[i].copy());
            }
        }
        stretch.add(coordinate(at(highM)));
        if (!(highM > lowM)) {
            throw new IllegalArgumentException("No stretch between " + fromM + " and " + toM);
        }
        LineString piece = line.getFactory().createLineString(stretch.toArray(new Coordinate[0]));
        return fromM <= toM ? piece : piece.reverse();
    }

    private static Coordinate coordinate(MetricPoint at) {
        return new Coordinate(at.eastM(), at.northM());
    }

    private double onLine(double chainage) {
        if (!(chainage >= -ROUNDING_M && chainage <= lengthM() + ROUNDING_M)) {
            throw new IllegalArgumentException(
                    "Chainage " + chainage + " m is outside the line, 0 to " + lengthM() + " m");
        }
        return Math.min(lengthM(), Math.max(0, chainage));
    }

    /** Index of the far vertex of a segment of some length that holds the chainage, which must be on the line. */
    private int segmentEnd(double chainage) {
        int found = Arrays.binarySearch(chainageM, chainage);
        int end = Math.max(1, found >= 0 ? found : -found - 1);
        while (chainageM[end] == chainageM[end - 1]) {
            end = end + 1 < chainageM.length ? end + 1 : lastWithLength();
        }
        return end;
    }

    private int lastWithLength() {
        int end = chainageM.length - 1;
        while (chainageM[end] == chainageM[end - 1]) {
            end--;
        }
        return end;
    }

    private double shareOf(double chainage, int end) {
        double length = chainageM[end] - chainageM[end - 1];
        return Math.min(1, Math.max(0, (chainage - chainageM[end - 1]) / length));
    }
}
