package org.wadeplan.geo.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.io.Feature;

/**
 * The demo round's invented ground: every stream falls from its source to its mouth, steeper above than below, and the ground
 * rises away from it. The same on any machine, because only StrictMath is used and heights are whole metres.
 */
final class DemoRelief {

    /** Stream, height of its source and mouth in metres, how much steeper it is above: 1 is the same all the way. */
    private static final String PROFILES = """
            BRN 262 4 1.7
            HSK 318 3 1.8
            TOL 284 1 1.9
            OUN 176 2 1.5
            PEL 74 0 4
            """;

    static final double WEST_M = 496_500;
    static final double NORTH_M = 5_119_500;
    static final double CELL_M = 100;
    static final int COLUMNS = 365;
    static final int ROWS = 420;

    /** For the sea: no ground is so far from a stream. */
    static final short SEA = -9999;

    private static final double SEA_FROM_M = 5500;
    private static final double HILL_M = 85;
    private static final double HILL_WIDTH_M = 1900;

    /** One piece of a stream's line with its height at either end. */
    private record Piece(LineSegment at, double fromM, double toM) {}

    private final List<List<Piece>> streams = new ArrayList<>();

    DemoRelief() {
        Map<String, LineString> lines = lines();
        PROFILES.lines().forEach(row -> {
            String[] parts = row.split(" ", -1);
            double source = Double.parseDouble(parts[1]);
            double mouth = Double.parseDouble(parts[2]);
            double bow = Double.parseDouble(parts[3]);
            LineString line = lines.get(parts[0]);
            if (line != null) {
                add(line, source, mouth, bow);
            }
        });
    }

    static Map<String, LineString> lines() {
        Map<String, LineString> lines = new TreeMap<>();
        for (Feature stream : DemoGeometry.streams().features()) {
            lines.put(stream.text("code").orElseThrow(), (LineString)
                    stream.geometry().orElseThrow());
        }
        return lines;
    }

    private void add(LineString line, double source, double mouth, double bow) {
        List<Piece> pieces = new ArrayList<>();
        double doneM = 0;
        double lengthM = line.getLength();
        for (int i = 1; i < line.getNumPoints(); i++) {
            LineSegment at = new LineSegment(line.getCoordinateN(i - 1), line.getCoordinateN(i));
            double endM = doneM + at.getLength();
            pieces.add(new Piece(
                    at,
                    mouth + (source - mouth) * StrictMath.pow(1 - doneM / lengthM, bow),
                    mouth + (source - mouth) * StrictMath.pow(StrictMath.max(0, 1 - endM / lengthM), bow)));
            doneM = endM;
        }
        streams.add(pieces);
    }

    /** Direction of flow of a stream at the vertex nearest to a place, over some 60 m, as a vector of length 1. */
    static Coordinate direction(String stream, Coordinate place) {
        LineString line = Objects.requireNonNull(lines().get(stream));
        int nearest = 0;
        for (int i = 1; i < line.getNumPoints(); i++) {
            if (line.getCoordinateN(i).distance(place)
                    < line.getCoordinateN(nearest).distance(place)) {
                nearest = i;
            }
        }
        Coordinate above = line.getCoordinateN(StrictMath.max(0, nearest - 2));
        Coordinate below = line.getCoordinateN(StrictMath.min(line.getNumPoints() - 1, nearest + 2));
        double lengthM = above.distance(below);
        return new Coordinate((below.x - above.x) / lengthM, (below.y - above.y) / lengthM);
    }

    /** Row by row from the north. */
    short[] heights() {
        short[] heights = new short[COLUMNS * ROWS];
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                heights[row * COLUMNS + column] =
                        height(new Coordinate(WEST_M + (column + 0.5) * CELL_M, NORTH_M - (row + 0.5) * CELL_M));
            }
        }
        return heights;
    }

    /** The water level of each stream around at its nearest place, the nearer the more, and a hill on top of that. */
    private short height(Coordinate place) {
        double nearestM = Double.POSITIVE_INFINITY;
        double levels = 0;
        double weights = 0;
        for (List<Piece> stream : streams) {
            double offM = SEA_FROM_M;
            double water = 0;
            for (Piece piece : stream) {
                double pieceM = roughM(piece, place) < offM + 30 ? piece.at().distance(place) : SEA_FROM_M;
                if (pieceM < offM) {
                    offM = pieceM;
                    double share =
                            StrictMath.max(0, StrictMath.min(1, piece.at().projectionFactor(place)));
                    water = piece.fromM() + share * (piece.toM() - piece.fromM());
                }
            }
            if (offM < SEA_FROM_M) {
                double weight = 1 / StrictMath.pow(offM + 1, 4);
                levels += weight * water;
                weights += weight;
                nearestM = StrictMath.min(nearestM, offM);
            }
        }
        return weights == 0 ? SEA : (short) StrictMath.rint(levels / weights + hill(nearestM, place));
    }

    private static double roughM(Piece piece, Coordinate place) {
        return StrictMath.max(StrictMath.abs(piece.at().p0.x - place.x), StrictMath.abs(piece.at().p0.y - place.y));
    }

    /** A flat valley floor, then a slope that levels out, with some waves in it. */
    private static double hill(double offM, Coordinate place) {
        double share = 1 - StrictMath.exp(-offM * offM / (HILL_WIDTH_M * HILL_WIDTH_M));
        double waves = StrictMath.sin(place.x / 870) * StrictMath.cos(place.y / 1130)
                + 0.5 * StrictMath.sin((place.x + place.y) / 410);
        return HILL_M * share * (1 + 0.25 * waves);
    }
}
