package org.wadeplan.geo.io;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.impl.CoordinateArraySequence;
import org.locationtech.jts.geom.impl.PackedCoordinateSequence;

/**
 * Reads the contents of shapefile records. Source: ESRI Shapefile Technical Description, July 1998, pages 5-16.
 *
 * <p>Numbers in a record are little-endian: the type, then for lines and areas a box (4 numbers), the count of parts, the
 * count of vertices, the number of each part's first vertex, and the vertices.
 */
final class ShpShapes {

    /** About 320 MB as plain numbers. */
    static final int MOST_VERTICES = 20_000_000;

    /** Above this, vertices are kept as plain numbers: as objects they would take three times the room. */
    private static final int LARGE = 1 << 16;

    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final int BOX_END = 36;
    private static final int PARTS_START = 44;
    private static final int VERTEX_BYTES = 16;

    private final FileWindow file;

    ShpShapes(FileWindow file) {
        this.file = file;
    }

    /** What is wrong with one record, as the rest of a sentence that begins with "its shape". */
    static final class Broken extends Exception {
        Broken(String what) {
            super(what, null, false, false);
        }

        String what() {
            return String.valueOf(getMessage());
        }
    }

    /** Empty for a record that says it has no shape. */
    Optional<Geometry> read(long offset, long bytes, int typeOfFile) throws IOException, Broken {
        if (bytes < Integer.BYTES) {
            throw new Broken("has a record of " + bytes + " bytes, too short for any shape");
        }
        int number = file.at(offset, Integer.BYTES).getInt(0);
        if (number == ShpType.NULL_SHAPE) {
            return Optional.empty();
        }
        if (number != typeOfFile) {
            throw new Broken("is of type " + number + ", and the file says that its shapes are of type " + typeOfFile);
        }
        return Optional.of(
                switch (ShpType.of(number).orElseThrow()) {
                    case POINT ->
                        SHAPES.createPoint(sequence(vertices(offset + Integer.BYTES, bytes, Integer.BYTES, 1)));
                    case POINTS -> points(offset, bytes);
                    case LINE -> lines(parts(offset, bytes, 2));
                    case AREA -> ShpRings.area(rings(parts(offset, bytes, 4)));
                });
    }

    private Geometry points(long offset, long bytes) throws IOException, Broken {
        int count = count(offset, bytes, BOX_END, "vertices");
        double[] all = vertices(offset + BOX_END + Integer.BYTES, bytes, BOX_END + Integer.BYTES, count);
        Point[] points = new Point[count];
        for (int i = 0; i < count; i++) {
            points[i] = SHAPES.createPoint(sequence(Arrays.copyOfRange(all, 2 * i, 2 * i + 2)));
        }
        return SHAPES.createMultiPoint(points);
    }

    private int count(long offset, long bytes, int at, String what) throws IOException, Broken {
        if (bytes < at + Integer.BYTES) {
            throw tooShort(bytes, at + Integer.BYTES);
        }
        int count = file.at(offset + at, Integer.BYTES).getInt(0);
        if (count < 1) {
            throw new Broken("says that it has " + count + " " + what);
        }
        if (count > MOST_VERTICES) {
            throw new Broken("says that it has " + count + " " + what + "; at most " + MOST_VERTICES + " can be read");
        }
        return count;
    }

    private static Broken tooShort(long bytes, long needed) {
        return new Broken("has a record of " + bytes + " bytes, and its counts need " + needed);
    }

    private double[] vertices(long from, long bytes, long before, int count) throws IOException, Broken {
        long needed = before + (long) count * VERTEX_BYTES;
        if (bytes < needed) {
            throw tooShort(bytes, needed);
        }
        double[] ordinates = file.vertices(from, count);
        for (double ordinate : ordinates) {
            if (!Double.isFinite(ordinate)) {
                throw new Broken("has a coordinate that is not a number");
            }
        }
        return ordinates;
    }

    private List<CoordinateSequence> parts(long offset, long bytes, int fewestVertices) throws IOException, Broken {
        int partCount = count(offset, bytes, BOX_END, "parts");
        int vertexCount = count(offset, bytes, BOX_END + Integer.BYTES, "vertices");
        long verticesStart = PARTS_START + (long) partCount * Integer.BYTES;
        if (bytes < verticesStart) {
            throw tooShort(bytes, verticesStart);
        }
        int[] starts = Arrays.copyOf(file.wholes(offset + PARTS_START, partCount), partCount + 1);
        starts[partCount] = vertexCount;
        if (starts[0] != 0) {
            throw new Broken("has a first part that does not begin at its first vertex");
        }
        double[] all = vertices(offset + verticesStart, bytes, verticesStart, vertexCount);
        List<CoordinateSequence> parts = new ArrayList<>();
        for (int part = 0; part < partCount; part++) {
            int from = starts[part];
            int to = starts[part + 1];
            if (from < 0 || to > vertexCount || to - from < fewestVertices) {
                throw new Broken("has a part from vertex " + from + " to " + to + ", too few or out of order");
            }
            parts.add(sequence(partCount == 1 ? all : Arrays.copyOfRange(all, 2 * from, 2 * to)));
        }
        return parts;
    }

    private static CoordinateSequence sequence(double[] ordinates) {
        CoordinateSequence packed = new PackedCoordinateSequence.Double(ordinates, 2, 0);
        return packed.size() > LARGE ? packed : new CoordinateArraySequence(packed);
    }

    private static Geometry lines(List<CoordinateSequence> parts) {
        LineString[] lines = parts.stream().map(SHAPES::createLineString).toArray(LineString[]::new);
        return lines.length == 1 ? lines[0] : SHAPES.createMultiLineString(lines);
    }

    private static List<LinearRing> rings(List<CoordinateSequence> parts) throws Broken {
        List<LinearRing> rings = new ArrayList<>();
        for (CoordinateSequence part : parts) {
            try {
                rings.add(SHAPES.createLinearRing(part));
            } catch (IllegalArgumentException open) {
                throw new Broken("has a ring that is not closed");
            }
        }
        return rings;
    }
}
