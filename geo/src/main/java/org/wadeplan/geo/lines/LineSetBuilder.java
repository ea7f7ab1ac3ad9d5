package org.wadeplan.geo.lines;

import java.util.Arrays;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;

/** Gathers lines into arrays that grow, and measures each as it comes. Not safe to share between threads. */
public final class LineSetBuilder {

    /** The longest array that every Java machine can make. */
    private static final int MOST_VERTICES = Integer.MAX_VALUE - 8;

    private final LineIds ids = new LineIds();
    private final GrowingDoubles eastM = new GrowingDoubles();
    private final GrowingDoubles northM = new GrowingDoubles();
    private final GrowingDoubles chainageM = new GrowingDoubles();
    private int[] firstVertex = new int[1025];
    private int vertices;

    private double lastEastM;
    private double lastNorthM;
    private double lastChainageM;

    /**
     * Adds one line. Vertices equal to the one before are left out.
     *
     * @param id what the file calls it
     * @param shape in the metric system
     * @return whether it was added: a line without length is not
     * @throws IllegalArgumentException where a coordinate is not finite; the line is then not added
     */
    public boolean add(String id, LineString shape) {
        CoordinateSequence from = shape.getCoordinateSequence();
        int start = vertices;
        for (int i = 0; i < from.size(); i++) {
            vertex(start, from.getX(i), from.getY(i));
        }
        return closed(id, start);
    }

    /**
     * Adds one line from a run of x, y, x, y …: the quick way, without a shape between.
     *
     * @param count number of vertices
     * @return whether it was added: a line without length is not
     * @throws IllegalArgumentException where a coordinate is not finite; the line is then not added
     */
    public boolean add(String id, double[] eastNorth, int count) {
        int start = vertices;
        for (int i = 0; i < count; i++) {
            vertex(start, eastNorth[2 * i], eastNorth[2 * i + 1]);
        }
        return closed(id, start);
    }

    public int lineCount() {
        return ids.count();
    }

    /** Everything added so far. The builder must not be used afterwards. */
    public LineSet build() {
        return new LineSet(
                ids,
                Arrays.copyOf(firstVertex, ids.count() + 1),
                eastM.drained(vertices),
                northM.drained(vertices),
                chainageM.drained(vertices));
    }

    private void vertex(int start, double east, double north) {
        if (!Double.isFinite(east) || !Double.isFinite(north)) {
            vertices = start;
            throw new IllegalArgumentException("A vertex needs finite coordinates, not " + east + ", " + north);
        }
        double atM = 0;
        if (vertices > start) {
            double stepM = stepM(east - lastEastM, north - lastNorthM);
            if (stepM == 0) {
                return;
            }
            atM = lastChainageM + stepM;
        }
        if (vertices == MOST_VERTICES) {
            throw new IllegalStateException("More than " + MOST_VERTICES + " vertices: read the lines in parts");
        }
        // Adding 0 makes one zero of the two, so that ends which coincide are equal bit by bit.
        lastEastM = east + 0.0;
        lastNorthM = north + 0.0;
        lastChainageM = atM;
        eastM.set(vertices, lastEastM);
        northM.set(vertices, lastNorthM);
        chainageM.set(vertices++, atM);
    }

    /**
     * The root of the sum of squares, as other programs for maps compute it, so that whole reaches are counted alike; the
     * slow exact way only where squares are too large or too small for a number.
     */
    private static double stepM(double east, double north) {
        double plain = Math.sqrt(east * east + north * north);
        return plain > 1e-140 && plain < 1e150 ? plain : Math.hypot(east, north);
    }

    private boolean closed(String id, int start) {
        if (vertices - start < 2) {
            vertices = start;
            return false;
        }
        ids.add(id);
        if (ids.count() == firstVertex.length) {
            firstVertex = Arrays.copyOf(firstVertex, firstVertex.length * 2);
        }
        firstVertex[ids.count()] = vertices;
        return true;
    }
}
