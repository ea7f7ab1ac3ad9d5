package org.wadeplan.geo.access;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.PackedSegmentIndex;
import org.wadeplan.geo.reach.Bank;

/** Where a straight walk meets stream lines, and on which side of its own it arrives. */
final class StreamsMet {

    /** This near to where it sets off or arrives, a walk has not crossed anything yet. */
    private static final double AT_END_M = 1;

    private final LineSet streams;
    private final PackedSegmentIndex index;

    StreamsMet(LineSet streams) {
        this.streams = streams;
        this.index = new PackedSegmentIndex(streams);
    }

    LineSet streams() {
        return streams;
    }

    /** In walking order; a line that is met twice is named twice. */
    List<StreamCrossing> on(StraightWalk walk) {
        List<StreamCrossing> met = new ArrayList<>();
        if (walk.isNone()) {
            return met;
        }
        Envelope box = walk.box();
        index.eachIn(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY(), (line, end) -> {
            Coordinate at = walk.segment().intersection(segment(end));
            if (at != null) {
                add(met, streams.id(line), StraightWalk.coordinate(walk.leave()).distance(at), walk.lengthM());
            }
        });
        met.sort(Comparator.comparingDouble(StreamCrossing::fromRoadM).thenComparing(StreamCrossing::stream));
        return met;
    }

    /** A walk through a vertex meets both segments there, but the stream once. */
    private static void add(List<StreamCrossing> met, String stream, double afterM, double lengthM) {
        boolean atEnd = afterM > lengthM - AT_END_M;
        boolean known = met.stream()
                .anyMatch(crossing ->
                        crossing.stream().equals(stream) && Math.abs(crossing.fromRoadM() - afterM) < AT_END_M);
        if (!atEnd && !known) {
            met.add(new StreamCrossing(stream, afterM));
        }
    }

    /** The side that the last step comes from. */
    Optional<Bank> bank(StraightWalk walk) {
        if (walk.isNone()) {
            return Optional.empty();
        }
        MetricPoint lastStep = walk.after(walk.lengthM() - Math.min(AT_END_M, walk.lengthM()));
        Coordinate from = StraightWalk.coordinate(lastStep);
        int end = streams.segmentEnd(walk.stream(), walk.chainageM());
        double left = left(segment(end), from);
        double offM = segment(end).distance(from);
        int next = end + 1;
        if (next < streams.endVertex(walk.stream()) && segment(next).distance(from) < offM) {
            left = left(segment(next), from);
        }
        return left == 0 ? Optional.empty() : Optional.of(left > 0 ? Bank.LEFT : Bank.RIGHT);
    }

    private LineSegment segment(int end) {
        return new LineSegment(
                streams.eastM(end - 1), streams.northM(end - 1), streams.eastM(end), streams.northM(end));
    }

    /** Above 0 on the left of the segment. */
    private static double left(LineSegment segment, Coordinate from) {
        return (segment.p1.x - segment.p0.x) * (from.y - segment.p0.y)
                - (segment.p1.y - segment.p0.y) * (from.x - segment.p0.x);
    }
}
