package org.wadeplan.geo.reach;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.lines.LineSet;

/**
 * How finely a stretch of line is drawn and how it winds: what can be measured on the line itself.
 *
 * @param lengthM along the line, metres
 * @param chordM straight from end to end, metres
 * @param vertexSpacingM mean distance between neighbouring vertices, metres
 * @param roundingShare by how much smooth bends through the vertices would be longer than the straight pieces between
 *     them, as a share of the length
 */
public record StretchShape(double lengthM, double chordM, double vertexSpacingM, double roundingShare) {

    /** A sharper turn than this between two pieces is a corner or a fault, and no bend of a channel. */
    private static final double SHARPEST_BEND = Math.PI / 2;

    /** Length along the line for one metre of straight distance, 1 or more; infinite for a closed ring. */
    public double sinuosity() {
        return chordM > 0 ? Math.max(1, lengthM / chordM) : Double.POSITIVE_INFINITY;
    }

    public static StretchShape of(LineString line) {
        Gauge gauge = new Gauge();
        for (Coordinate vertex : line.getCoordinates()) {
            gauge.vertex(vertex.x, vertex.y);
        }
        return gauge.shape();
    }

    /** Several stretches in a row, each the next one's neighbour, as one. */
    public static StretchShape of(List<LineString> stretches) {
        Gauge gauge = new Gauge();
        stretches.forEach(line -> {
            for (Coordinate vertex : line.getCoordinates()) {
                gauge.vertex(vertex.x, vertex.y);
            }
        });
        return gauge.shape();
    }

    /** The stretch of a line between two chainages, without making a shape of it. */
    public static StretchShape of(LineSet lines, int line, double fromM, double toM) {
        Gauge gauge = new Gauge();
        gauge.stretch(lines, line, fromM, toM);
        return gauge.shape();
    }

    /** Takes vertices one by one. */
    public static final class Gauge {
        private int count;
        private double firstEast;
        private double firstNorth;
        private double lastEast;
        private double lastNorth;
        private double lastStepM;
        private double lastHeading;
        private double lengthM;
        private double excessM;

        /** The next vertex; one equal to the last is passed over. */
        public void vertex(double east, double north) {
            if (count == 0) {
                firstEast = east;
                firstNorth = north;
            } else {
                double stepM = Math.hypot(east - lastEast, north - lastNorth);
                if (stepM == 0) {
                    return;
                }
                step(stepM, Math.atan2(north - lastNorth, east - lastEast));
            }
            lastEast = east;
            lastNorth = north;
            count++;
        }

        /**
         * An arc of a circle through evenly spaced vertices that turn by an angle t is longer than its chord by
         * (t/2) / sin(t/2).
         */
        private void step(double stepM, double heading) {
            if (lastStepM > 0) {
                double turn = Math.abs(Math.IEEEremainder(heading - lastHeading, 2 * Math.PI));
                double half = Math.min(turn, SHARPEST_BEND) / 2;
                if (half > 0) {
                    excessM += (lastStepM + stepM) / 2 * (half / Math.sin(half) - 1);
                }
            }
            lengthM += stepM;
            lastStepM = stepM;
            lastHeading = heading;
        }

        /** The vertices between two chainages of a line, downstream where the first is smaller, with both ends. */
        public void stretch(LineSet lines, int line, double fromM, double toM) {
            boolean down = fromM <= toM;
            int low = lines.segmentEnd(line, Math.min(fromM, toM));
            int high = lines.segmentEnd(line, Math.max(fromM, toM));
            end(lines, line, fromM);
            for (int i = 0; i < high - low; i++) {
                int vertex = down ? low + i : high - 1 - i;
                vertex(lines.eastM(vertex), lines.northM(vertex));
            }
            end(lines, line, toM);
        }

        private void end(LineSet lines, int line, double atM) {
            var at = lines.at(line, atM);
            vertex(at.eastM(), at.northM());
        }

        public StretchShape shape() {
            if (count < 2) {
                throw new IllegalArgumentException("A stretch needs a length");
            }
            return new StretchShape(
                    lengthM,
                    Math.hypot(lastEast - firstEast, lastNorth - firstNorth),
                    lengthM / (count - 1),
                    excessM / lengthM);
        }
    }
}
