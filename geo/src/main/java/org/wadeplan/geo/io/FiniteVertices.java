package org.wadeplan.geo.io;

import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;

/** Looks for vertices that are nowhere: not a number, or infinite. */
final class FiniteVertices implements CoordinateSequenceFilter {

    private boolean allFinite = true;

    private FiniteVertices() {}

    static boolean all(Geometry shape) {
        FiniteVertices check = new FiniteVertices();
        shape.apply(check);
        return check.allFinite;
    }

    @Override
    public void filter(CoordinateSequence vertices, int index) {
        allFinite &= Double.isFinite(vertices.getX(index)) && Double.isFinite(vertices.getY(index));
    }

    @Override
    public boolean isDone() {
        return !allFinite;
    }

    @Override
    public boolean isGeometryChanged() {
        return false;
    }
}
