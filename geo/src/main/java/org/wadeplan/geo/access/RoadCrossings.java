package org.wadeplan.geo.access;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.wadeplan.geo.lines.LineSet;

/** Where roads and tracks meet stream lines. */
public final class RoadCrossings {

    /** Two segments that share a vertex meet the other line there once, metres. */
    private static final double SAME_M = 0.01;

    private RoadCrossings() {}

    /**
     * All of them, by line, chainage and road.
     *
     * @param streams in the round's metric system
     */
    public static List<RoadCrossing> of(Roads roads, LineSet streams) {
        List<RoadCrossing> found = new ArrayList<>();
        for (int line = 0; line < streams.lineCount(); line++) {
            found.addAll(on(roads, streams, line));
        }
        return found;
    }

    private static List<RoadCrossing> on(Roads roads, LineSet streams, int line) {
        List<RoadCrossing> found = new ArrayList<>();
        for (int end = streams.firstVertex(line) + 1; end < streams.endVertex(line); end++) {
            int vertex = end;
            LineSegment piece = segment(streams, vertex);
            roads.index()
                    .eachIn(
                            piece.minX(),
                            Math.min(piece.p0.y, piece.p1.y),
                            piece.maxX(),
                            Math.max(piece.p0.y, piece.p1.y),
                            (road, roadEnd) -> {
                                Coordinate at = piece.intersection(segment(roads.lines(), roadEnd));
                                if (at != null) {
                                    double atM = streams.chainageM(vertex - 1) + piece.p0.distance(at);
                                    add(
                                            found,
                                            new RoadCrossing(
                                                    line, atM, roads.lines().id(road), roads.kind(road)));
                                }
                            });
        }
        found.sort(Comparator.comparingDouble(RoadCrossing::chainageM).thenComparing(RoadCrossing::road));
        return found;
    }

    private static void add(List<RoadCrossing> found, RoadCrossing next) {
        boolean known = found.stream()
                .anyMatch(crossing -> crossing.road().equals(next.road())
                        && Math.abs(crossing.chainageM() - next.chainageM()) < SAME_M);
        if (!known) {
            found.add(next);
        }
    }

    private static LineSegment segment(LineSet lines, int end) {
        return new LineSegment(lines.eastM(end - 1), lines.northM(end - 1), lines.eastM(end), lines.northM(end));
    }
}
