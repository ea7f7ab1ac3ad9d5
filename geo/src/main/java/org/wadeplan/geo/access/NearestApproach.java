package org.wadeplan.geo.access;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;

/** Looks for the pair of a road's and a stretch's segment that come nearest to each other. */
final class NearestApproach {

    /** Distances that differ by less than this, metres, are the same. */
    private static final double SAME_M = 1e-6;

    private final Roads roads;
    private final LineSet streams;
    private final int line;
    private Optional<StraightWalk> best = Optional.empty();
    private double leastM;

    /** @param boundM no road that is further off than this is looked at, metres */
    NearestApproach(Roads roads, LineSet streams, int line, double boundM) {
        this.roads = roads;
        this.streams = streams;
        this.line = line;
        this.leastM = boundM;
    }

    /** From the lower end up, so that at the same distance the place nearest to the lower end stays. */
    Optional<StraightWalk> on(double upperM, double lowerM) {
        double below = lowerM;
        for (int end = streams.segmentEnd(line, lowerM); below > upperM; end--) {
            double above = Math.max(upperM, streams.chainageM(end - 1));
            segment(above, below);
            below = above;
        }
        return best;
    }

    private void segment(double above, double below) {
        LineSegment stretch = new LineSegment(
                StraightWalk.coordinate(streams.at(line, below)), StraightWalk.coordinate(streams.at(line, above)));
        Envelope box = new Envelope(stretch.p0, stretch.p1);
        box.expandBy(leastM + SAME_M);
        LineSet lines = roads.lines();
        Optional<StraightWalk> before = best;
        roads.index().eachIn(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY(), (road, end) -> {
            LineSegment piece =
                    new LineSegment(lines.eastM(end - 1), lines.northM(end - 1), lines.eastM(end), lines.northM(end));
            Coordinate[] pair = stretch.closestPoints(piece);
            double distanceM = pair[0].distance(pair[1]);
            // At the same distance from the same segment, the road with the smaller number: the tree's order must not
            // tell.
            boolean sameButEarlier = distanceM < leastM + SAME_M
                    && !best.equals(before)
                    && best.filter(walk -> walk.road() > road).isPresent();
            if (distanceM < leastM - SAME_M || (best.isEmpty() && distanceM <= leastM + SAME_M) || sameButEarlier) {
                leastM = Math.min(leastM, distanceM);
                double atM = Math.max(above, below - stretch.p0.distance(pair[0]));
                best = Optional.of(new StraightWalk(road, point(pair[1]), line, atM, point(pair[0])));
            }
        });
    }

    private static MetricPoint point(Coordinate at) {
        return new MetricPoint(at.x, at.y);
    }
}
