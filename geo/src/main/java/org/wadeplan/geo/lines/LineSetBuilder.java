package org.wadeplan.geo.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;

/** Gathers lines into arrays that grow, and measures each as it comes. Not safe to share between threads. */
public final class LineSetBuilder {

    /** The longest array that every Java machine can make. */
    private static final int MOST_VERTICES = Integer.MAX_VALUE - 8;

    private final List<String> ids = new ArrayList<>();
    private int[] firstVertex = new int[1025];
    private double[] eastM;
    private double[] northM;
    private double[] chainageM;
    private int vertices;

    public LineSetBuilder() {
        this(8192);
    }

    /** @param expectedVertices about how many vertices will come; more or fewer do no harm */
    public LineSetBuilder(int expectedVertices) {
        this.eastM = new double[Math.max(16, expectedVertices)];
        this.northM = new double[eastM.length];
        this.chainageM = new double[eastM.length];
    }

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
        return ids.size();
    }

    /** Everything added so far. The builder must not be used afterwards. */
    public LineSet build() {
        return new LineSet(
                ids.toArray(String[]::new),
                Arrays.copyOf(firstVertex, ids.size() + 1),
                trimmed(eastM),
                trimmed(northM),
                trimmed(chainageM));
    }

    private double[] trimmed(double[] ordinates) {
        return ordinates.length == vertices ? ordinates : Arrays.copyOf(ordinates, vertices);
    }

    private void vertex(int start, double east, double north) {
        if (!Double.isFinite(east) || !Double.isFinite(north)) {
            vertices = start;
            throw new IllegalArgumentException("A vertex needs finite coordinates, not " + east + ", " + north);
        }
        double atM = 0;
        if (vertices > start) {
            double stepM = stepM(east - eastM[vertices - 1], north - northM[vertices - 1]);
            if (stepM == 0) {
                return;
            }
            atM = chainageM[vertices - 1] + stepM;
        }
        if (vertices == eastM.length) {
            grow();
        }
        // Adding 0 makes one zero of the two, so that ends which coincide are equal bit by bit.
        eastM[vertices] = east + 0.0;
        northM[vertices] = north + 0.0;
        chainageM[vertices++] = atM;
    }

    /**
     * The root of the sum of squares, as other programs for maps compute it, so that whole reaches are counted alike; the
     * slow exact way only where squares are too large or too small for a number.
     */
    private static double stepM(double east, double north) {
        double plain = Math.sqrt(east * east + north * north);
        return plain > 1e-140 && plain < 1e150 ? plain : Math.hypot(east, north);
    }

    private void grow() {
        if (vertices == MOST_VERTICES) {
            throw new IllegalStateException("More than " + MOST_VERTICES + " vertices: read the lines in parts");
        }
        int larger = (int) Math.min(MOST_VERTICES, vertices + vertices / 2L + 16);
        eastM = Arrays.copyOf(eastM, larger);
        northM = Arrays.copyOf(northM, larger);
        chainageM = Arrays.copyOf(chainageM, larger);
    }

    private boolean closed(String id, int start) {
        if (vertices - start < 2) {
            vertices = start;
            return false;
        }
        ids.add(id);
        if (ids.size() == firstVertex.length) {
            firstVertex = Arrays.copyOf(firstVertex, firstVertex.length * 2);
        }
        firstVertex[ids.size()] = vertices;
        return true;
    }
}
