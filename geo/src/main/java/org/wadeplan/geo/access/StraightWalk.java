package org.wadeplan.geo.access;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * From where people leave a road straight to a place on a stream.
 *
 * @param road number of the road's line
 * @param leave on the road
 * @param stream number of the stream's line
 * @param chainageM of the place on it, metres
 * @param arrive the place
 */
record StraightWalk(int road, MetricPoint leave, int stream, double chainageM, MetricPoint arrive) {

    /** A shorter walk is none: the road meets the stream. */
    static final double LEAST_M = 0.5;

    private static final GeometryFactory SHAPES = new GeometryFactory();

    double lengthM() {
        return leave.distanceM(arrive);
    }

    boolean isNone() {
        return lengthM() < LEAST_M;
    }

    MetricPoint after(double walkedM) {
        double share = lengthM() == 0 ? 0 : walkedM / lengthM();
        return new MetricPoint(
                leave.eastM() + share * (arrive.eastM() - leave.eastM()),
                leave.northM() + share * (arrive.northM() - leave.northM()));
    }

    LineSegment segment() {
        return new LineSegment(coordinate(leave), coordinate(arrive));
    }

    Envelope box() {
        return new Envelope(coordinate(leave), coordinate(arrive));
    }

    /** A line, or a point where there is nothing to walk. */
    Geometry shape() {
        return isNone()
                ? SHAPES.createPoint(coordinate(arrive))
                : SHAPES.createLineString(new Coordinate[] {coordinate(leave), coordinate(arrive)});
    }

    static Coordinate coordinate(MetricPoint point) {
        return new Coordinate(point.eastM(), point.northM());
    }
}
