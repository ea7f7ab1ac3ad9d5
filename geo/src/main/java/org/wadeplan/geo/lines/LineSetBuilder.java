package org.wadeplan.geo.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;

/** Gathers lines into arrays that grow, and measures each as it comes. Not safe to share between threads. */
public final class LineSetBuilder {

    private final List<String> ids = new ArrayList<>();
    private int[] firstVertex = new int[1025];
    private double[] eastM = new double[8192];
    private double[] northM = new double[8192];
    private double[] chainageM = new double[8192];
    private int vertices;

    /**
     * Adds one line. Vertices equal to the one before are left out.
     *
     * @param id what the file calls it
     * @param shape in the metric system
     * @return whether it was added: a line without length is not
     * @throws IllegalArgumentException where a coordinate is not finite
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
                Arrays.copyOf(eastM, vertices),
                Arrays.copyOf(northM, vertices),
                Arrays.copyOf(chainageM, vertices));
    }

    private void vertex(int start, double east, double north) {
        if (!Double.isFinite(east) || !Double.isFinite(north)) {
            throw new IllegalArgumentException("A vertex needs finite coordinates, not " + east + ", " + north);
        }
        double atM = 0;
        if (vertices > start) {
            double stepM = Math.hypot(east - eastM[vertices - 1], north - northM[vertices - 1]);
            if (stepM == 0) {
                return;
            }
            atM = chainageM[vertices - 1] + stepM;
        }
        if (vertices == eastM.length) {
            int larger = vertices + vertices / 2;
            eastM = Arrays.copyOf(eastM, larger);
            northM = Arrays.copyOf(northM, larger);
            chainageM = Arrays.copyOf(chainageM, larger);
        }
        eastM[vertices] = east;
        northM[vertices] = north;
        chainageM[vertices++] = atM;
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
