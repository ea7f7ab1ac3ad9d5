package org.wadeplan.geo.io;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.crs.Reprojection;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Brings the shapes of one file into the round's system, and refuses those that do not belong there. */
final class IntoRound {

    /** No segment of a mapped line is this long; one that is has gone round the earth. */
    private static final double LONGEST_SEGMENT_M = 1_000_000;

    private final CoordinateSystem round;
    private final SourcePlace file;
    private final Reprojection move;
    private final boolean already;
    private final boolean degrees;

    IntoRound(CoordinateSystem round, SourcePlace file, StatedSystem stated, Reprojection move) {
        this.round = round;
        this.file = file;
        this.move = move;
        this.already = stated.code().equals(Optional.of(round.code()));
        this.degrees = !already && CoordinateSystem.inDegrees(stated);
    }

    /** The feature in the round's system; no value where it lies elsewhere, with the problem that says so. */
    Checked<Feature> move(Feature feature) {
        Geometry shape = feature.geometry().orElseThrow();
        if (already || shape.isEmpty()) {
            return Checked.of(feature);
        }
        SourcePlace place = file.row("feature " + feature.id());
        Optional<Geometry> moved = moved(shape);
        if (moved.isEmpty()) {
            return Checked.failed(outside(shape, place));
        }
        if (degrees && JumpOverTheEdge.in(shape) && longestSegmentM(moved.get()) > LONGEST_SEGMENT_M) {
            return Checked.failed(acrossTheEdge(place));
        }
        return Checked.of(feature.withGeometry(moved.get()));
    }

    private Optional<Geometry> moved(Geometry shape) {
        try {
            Geometry there = move.apply(shape);
            Coordinate first = there.getCoordinate();
            return round.inArea(new MetricPoint(first.x, first.y)) ? Optional.of(there) : Optional.empty();
        } catch (IllegalArgumentException nowhere) {
            return Optional.empty();
        }
    }

    private Problem outside(Geometry shape, SourcePlace place) {
        Coordinate first = shape.getCoordinate();
        boolean swapped = moved(new GeometryFactory().createPoint(new Coordinate(first.y, first.x)))
                .isPresent();
        return Problem.error(
                "place-out-of-area",
                place,
                "it begins at " + GeoJsonShape.plain(first.x) + ", " + GeoJsonShape.plain(first.y)
                        + ", outside the area of " + round.words()
                        + (swapped ? "; the other way round it would lie inside" : ""),
                "places in the round's area, longitude or easting first",
                swapped
                        ? "swap the two coordinates in the program that wrote the file"
                        : "check the layer's coordinate system, and that the layer is one of this area");
    }

    private Problem acrossTheEdge(SourcePlace place) {
        return Problem.error(
                "line-across-antimeridian",
                place,
                "it jumps across the 180th meridian, from one edge of the map to the other, and " + round.name()
                        + " does not reach across it",
                "lines that " + round.code() + " can show in one piece",
                "choose a system made for both sides, such as the UTM zone, or cut the line at 180 degrees");
    }

    private static double longestSegmentM(Geometry shape) {
        double longestM = 0;
        for (int part = 0; part < shape.getNumGeometries(); part++) {
            if (shape.getGeometryN(part) instanceof LineString line) {
                CoordinateSequence at = line.getCoordinateSequence();
                for (int i = 1; i < at.size(); i++) {
                    double stepM = Math.hypot(at.getX(i) - at.getX(i - 1), at.getY(i) - at.getY(i - 1));
                    longestM = Math.max(longestM, stepM);
                }
            }
        }
        return longestM;
    }

    /** Finds neighbouring vertices more than half the earth apart in longitude: the line takes the short way round. */
    private static final class JumpOverTheEdge implements CoordinateSequenceFilter {

        private boolean found;

        static boolean in(Geometry shape) {
            JumpOverTheEdge search = new JumpOverTheEdge();
            shape.apply(search);
            return search.found;
        }

        @Override
        public void filter(CoordinateSequence vertices, int index) {
            found |= index > 0 && Math.abs(vertices.getX(index) - vertices.getX(index - 1)) > 180;
        }

        @Override
        public boolean isDone() {
            return found;
        }

        @Override
        public boolean isGeometryChanged() {
            return false;
        }
    }
}
