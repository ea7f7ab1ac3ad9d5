package org.wadeplan.geo.terrain;

import java.util.Optional;
import org.wadeplan.geo.crs.GridSystem;
import org.wadeplan.geo.problem.Problem;

/** Whether a grid's coordinates can be what its system says, and how large its cells then are on the ground. */
final class PlaceInSystem {

    /** A degree of latitude, metres: mean of the WGS 84 ellipsoid, from memory. */
    private static final double DEGREE_M = 111_195;

    private PlaceInSystem() {}

    /** Degrees where metres should be, or the other way round. */
    static Optional<Problem> fault(GridFile.ReadGrid read, GridRequest request) {
        GridFrame frame = read.cells().frame();
        double x = frame.x((frame.columns() - 1) / 2.0, (frame.rows() - 1) / 2.0);
        double y = frame.y((frame.columns() - 1) / 2.0, (frame.rows() - 1) / 2.0);
        boolean couldBeDegrees = Math.abs(x) <= 360 && Math.abs(y) <= 90;
        GridSystem system = read.system();
        if (system.degrees() && !couldBeDegrees) {
            return Optional.of(request.faults()
                    .outsideSystem(
                            x,
                            y,
                            system.words(),
                            "these are metres: name the metric system they are in under elevation in round.json,"
                                    + " probably \"crs\": \"" + request.round().code() + "\""));
        }
        double cell = Math.max(Math.hypot(frame.columnX(), frame.columnY()), Math.hypot(frame.rowX(), frame.rowY()));
        if (!system.degrees() && couldBeDegrees && cell < 0.5) {
            return Optional.of(request.faults()
                    .outsideSystem(
                            x,
                            y,
                            system.words(),
                            "these are probably degrees: name their system under elevation in round.json,"
                                    + " probably \"crs\": \"EPSG:4326\""));
        }
        return Optional.empty();
    }

    /** Mean side of a cell in the middle of the grid, metres. */
    static double cellM(GridFile.ReadGrid read, GridRequest request) {
        GridFrame frame = read.cells().frame();
        if (!read.system().degrees()) {
            double unitM = read.system().unitM();
            return unitM * (Math.hypot(frame.columnX(), frame.columnY()) + Math.hypot(frame.rowX(), frame.rowY())) / 2;
        }
        double latDeg = frame.y((frame.columns() - 1) / 2.0, (frame.rows() - 1) / 2.0);
        double eastM = DEGREE_M * Math.cos(Math.toRadians(latDeg));
        double columnM = Math.hypot(frame.columnX() * eastM, frame.columnY() * DEGREE_M);
        double rowM = Math.hypot(frame.rowX() * eastM, frame.rowY() * DEGREE_M);
        return (columnM + rowM) / 2;
    }
}
