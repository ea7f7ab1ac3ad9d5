package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * Finds where an end of one line lies on another line, at its end or anywhere along it.
 *
 * <p>Lines that merely cross are not joined: that may be a canal over a stream.
 */
public final class Junctions {

    /** Ends this near to another line, in metres, meet it. Mapped data meets exactly or misses by more. */
    public static final double TOLERANCE_M = 0.5;

    private Junctions() {}

    static List<Junction> of(StreamNetwork network) {
        List<Junction> found = new ArrayList<>();
        for (StreamLine stream : network.lines()) {
            for (Coordinate end : ends(stream.line())) {
                Junction junction = around(new MetricPoint(end.x, end.y), network);
                if (junction.arms().size() > 1) {
                    add(junction, found);
                }
            }
        }
        return List.copyOf(found);
    }

    static List<Coordinate> ends(LineString line) {
        return List.of(line.getCoordinateN(0), line.getCoordinateN(line.getNumPoints() - 1));
    }

    private static Junction around(MetricPoint place, StreamNetwork network) {
        List<Junction.Arm> arms = new ArrayList<>();
        for (StreamLine stream : network.lines()) {
            Envelope near = new Envelope(stream.line().getEnvelopeInternal());
            near.expandBy(TOLERANCE_M);
            if (near.contains(place.eastM(), place.northM())) {
                LineMeasure.Foot foot = network.measure(stream.code()).foot(place);
                if (foot.distanceM() <= TOLERANCE_M) {
                    arms.add(new Junction.Arm(stream.code(), foot.chainageM()));
                }
            }
        }
        return new Junction(place, arms);
    }

    private static void add(Junction junction, List<Junction> found) {
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).at().distanceM(junction.at()) <= TOLERANCE_M) {
                found.set(i, merged(found.get(i), junction));
                return;
            }
        }
        found.add(junction);
    }

    private static Junction merged(Junction first, Junction second) {
        TreeMap<String, Junction.Arm> arms = new TreeMap<>();
        second.arms().forEach(arm -> arms.put(arm.code(), arm));
        first.arms().forEach(arm -> arms.put(arm.code(), arm));
        return new Junction(first.at(), List.copyOf(arms.values()));
    }
}
