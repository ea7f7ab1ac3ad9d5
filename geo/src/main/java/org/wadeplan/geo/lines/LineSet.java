package org.wadeplan.geo.lines;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * Lines in one metric coordinate system, as arrays of vertices with the chainage of each.
 *
 * <p>Lines are numbered from 0 in the order in which they were added, vertices run on from line to line. Every line has at
 * least two vertices and a length above 0; neighbouring vertices differ. A place on a line is always a line number and a
 * chainage, metres from its first vertex: never a point that one would have to find again. Immutable; safe to share
 * between threads.
 */
public final class LineSet {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** A chainage this far outside its line, in metres, is a difference of rounding and no error. */
    private static final double ROUNDING_M = 1e-6;

    private final LineIds ids;
    private final int[] firstVertex;
    private final double[] eastM;
    private final double[] northM;
    private final double[] chainageM;

    /** The arrays are taken over, not copied: only the builder calls this. */
    LineSet(LineIds ids, int[] firstVertex, double[] eastM, double[] northM, double[] chainageM) {
        this.ids = ids;
        this.firstVertex = firstVertex;
        this.eastM = eastM;
        this.northM = northM;
        this.chainageM = chainageM;
    }

    public int lineCount() {
        return ids.count();
    }

    public int vertexCount() {
        return firstVertex[ids.count()];
    }

    /** What the file calls the line; need not be unique. */
    public String id(int line) {
        return ids.get(line);
    }

    /** Number of the line's first vertex. */
    public int firstVertex(int line) {
        return firstVertex[line];
    }

    /** Number of the vertex after the line's last. */
    public int endVertex(int line) {
        return firstVertex[line + 1];
    }

    public double eastM(int vertex) {
        return eastM[vertex];
    }

    public double northM(int vertex) {
        return northM[vertex];
    }

    /** Metres from the first vertex of the vertex's own line, in the plane. */
    public double chainageM(int vertex) {
        return chainageM[vertex];
    }

    public double lengthM(int line) {
        return chainageM[firstVertex[line + 1] - 1];
    }

    /**
     * The point at a chainage.
     *
     * @throws IllegalArgumentException where the chainage lies outside the line: nothing is clamped
     */
    public MetricPoint at(int line, double atM) {
        int end = segmentEnd(line, atM);
        double share = share(end, atM);
        return new MetricPoint(along(eastM, end, share), along(northM, end, share));
    }

    /**
     * The number of the vertex that ends the segment on which a chainage lies; at a vertex, the segment before it.
     *
     * @throws IllegalArgumentException where the chainage lies outside the line
     */
    public int segmentEnd(int line, double atM) {
        if (!(atM >= -ROUNDING_M && atM <= lengthM(line) + ROUNDING_M)) {
            throw new IllegalArgumentException(
                    "Chainage " + atM + " m lies outside line " + id(line) + " of " + lengthM(line) + " m");
        }
        int first = firstVertex[line];
        int found = Arrays.binarySearch(chainageM, first, firstVertex[line + 1], atM);
        int end = found >= 0 ? found : -found - 1;
        return Math.min(Math.max(end, first + 1), firstVertex[line + 1] - 1);
    }

    private double share(int end, double atM) {
        double share = (atM - chainageM[end - 1]) / (chainageM[end] - chainageM[end - 1]);
        return Math.min(1, Math.max(0, share));
    }

    private static double along(double[] ordinate, int end, double share) {
        return ordinate[end - 1] + share * (ordinate[end] - ordinate[end - 1]);
    }

    /** The whole line as a shape of its own. */
    public LineString shape(int line) {
        return between(line, 0, lengthM(line));
    }

    /**
     * The stretch between two chainages, running from the first to the second, which may be the smaller or the larger.
     *
     * @throws IllegalArgumentException where a chainage lies outside the line or both are the same
     */
    public LineString between(int line, double fromM, double toM) {
        if (fromM == toM) {
            throw new IllegalArgumentException("A stretch needs a length, at " + fromM + " m of line " + id(line));
        }
        double lowM = Math.min(fromM, toM);
        double highM = Math.max(fromM, toM);
        int from = segmentEnd(line, lowM);
        int to = segmentEnd(line, highM);
        Coordinate[] shape = new Coordinate[to - from + 2];
        int filled = 0;
        shape[filled++] = coordinate(line, lowM);
        for (int vertex = from; vertex < to; vertex++) {
            if (chainageM[vertex] > lowM) {
                shape[filled++] = new Coordinate(eastM[vertex], northM[vertex]);
            }
        }
        shape[filled++] = coordinate(line, highM);
        LineString stretch = GEOMETRY.createLineString(Arrays.copyOf(shape, filled));
        return fromM < toM ? stretch : stretch.reverse();
    }

    private Coordinate coordinate(int line, double atM) {
        MetricPoint point = at(line, atM);
        return new Coordinate(point.eastM(), point.northM());
    }
}
