package org.wadeplan.geo.crs;

import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.TransformException;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;

/** Brings geometry from a map file's coordinate system into the round's. The original is never changed. */
public interface Reprojection {

    /** For files that are already in the round's system. */
    Reprojection NONE = geometry -> geometry;

    /**
     * The same shape in the round's system.
     *
     * @throws IllegalArgumentException where a vertex cannot be shown there
     */
    Geometry apply(Geometry geometry);

    /**
     * Vertex by vertex through a transform: for lines densified to tens of metres that is exact to millimetres.
     *
     * <p>The first vertex is brought back as well: far outside its area a projection gives numbers that are no place, and
     * a definition without an area of use is caught in no other way.
     *
     * @param degrees whether the file counts in degrees
     */
    static Reprojection through(MathTransform transform, boolean degrees) {
        return geometry -> {
            Geometry moved = geometry.copy();
            moved.apply(new EachVertex(transform));
            moved.geometryChanged();
            Coordinate before = geometry.getCoordinate();
            if (before != null) {
                refuseUnlessItComesBack(transform, before, moved.getCoordinate(), degrees);
            }
            return moved;
        };
    }

    private static void refuseUnlessItComesBack(
            MathTransform transform, Coordinate before, Coordinate after, boolean degrees) {
        double[] at = {after.x, after.y};
        try {
            transform.inverse().transform(at, 0, at, 0, 1);
        } catch (TransformException noWayBack) {
            throw new IllegalArgumentException("No place at " + before.x + ", " + before.y, noWayBack);
        }
        double offEast = Math.abs(at[0] - before.x);
        double off =
                Math.max(degrees ? Math.min(offEast, Math.abs(offEast - 360)) : offEast, Math.abs(at[1] - before.y));
        // About a metre either way.
        if (!(off < (degrees ? 1e-5 : 1))) {
            throw new IllegalArgumentException("No place at " + before.x + ", " + before.y);
        }
    }

    /** Moves the two plane coordinates of every vertex. */
    record EachVertex(MathTransform transform) implements CoordinateSequenceFilter {

        @Override
        public void filter(CoordinateSequence vertices, int index) {
            double[] at = {vertices.getX(index), vertices.getY(index)};
            try {
                transform.transform(at, 0, at, 0, 1);
            } catch (TransformException impossible) {
                throw new IllegalArgumentException("No place at " + at[0] + ", " + at[1], impossible);
            }
            if (!Double.isFinite(at[0]) || !Double.isFinite(at[1])) {
                throw new IllegalArgumentException("A vertex cannot be shown in the round's system");
            }
            vertices.setOrdinate(index, 0, at[0]);
            vertices.setOrdinate(index, 1, at[1]);
        }

        @Override
        public boolean isDone() {
            return false;
        }

        @Override
        public boolean isGeometryChanged() {
            return true;
        }
    }
}
