package org.wadeplan.geo.crs;

import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.TransformException;
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

    /** Vertex by vertex through a transform: for lines densified to tens of metres that is exact to millimetres. */
    static Reprojection through(MathTransform transform) {
        return geometry -> {
            Geometry moved = geometry.copy();
            moved.apply(new EachVertex(transform));
            moved.geometryChanged();
            return moved;
        };
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
