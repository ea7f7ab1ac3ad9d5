package org.wadeplan.geo.draw;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.index.strtree.STRtree;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;

/** Which stretches of lines lie on a piece of land. A line along its outline counts as on it. */
public final class AreaSpans {

    private final LineSet lines;
    private final STRtree boxes = new STRtree();

    public AreaSpans(LineSet lines) {
        this.lines = lines;
        for (int line = 0; line < lines.lineCount(); line++) {
            Envelope box = new Envelope();
            for (int vertex = lines.firstVertex(line); vertex < lines.endVertex(line); vertex++) {
                box.expandToInclude(lines.eastM(vertex), lines.northM(vertex));
            }
            boxes.insert(box, line);
        }
    }

    /** A stretch of a line, between two chainages in metres. */
    public record Span(int line, double fromM, double toM) {}

    /** Every stretch on the land, by line and then downstream. */
    public List<Span> of(Geometry land) {
        TreeSet<Integer> near = new TreeSet<>();
        for (Object line : boxes.query(land.getEnvelopeInternal())) {
            near.add((Integer) line);
        }
        List<Span> spans = new ArrayList<>();
        if (!near.isEmpty()) {
            IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(land);
            near.forEach(line -> spans(line, land, inside, spans));
        }
        return spans;
    }

    private void spans(int line, Geometry land, IndexedPointInAreaLocator inside, List<Span> spans) {
        NavigableSet<Double> cuts = crossings(line, land);
        cuts.add(lines.lengthM(line));
        double aboveM = 0;
        double startM = -1;
        for (double belowM : cuts) {
            MetricPoint middle = lines.at(line, (aboveM + belowM) / 2);
            boolean on = inside.locate(new Coordinate(middle.eastM(), middle.northM())) != Location.EXTERIOR;
            if (on && startM < 0) {
                startM = aboveM;
            } else if (!on && startM >= 0) {
                spans.add(new Span(line, startM, aboveM));
                startM = -1;
            }
            aboveM = belowM;
        }
        if (startM >= 0) {
            spans.add(new Span(line, startM, aboveM));
        }
    }

    /** Chainages above 0 at which the line meets the land's outline. */
    private NavigableSet<Double> crossings(int line, Geometry land) {
        NavigableSet<Double> cuts = new TreeSet<>();
        Collection<?> rings = LinearComponentExtracter.getLines(land);
        Envelope box = land.getEnvelopeInternal();
        for (int end = lines.firstVertex(line) + 1; end < lines.endVertex(line); end++) {
            Coordinate from = new Coordinate(lines.eastM(end - 1), lines.northM(end - 1));
            Coordinate to = new Coordinate(lines.eastM(end), lines.northM(end));
            if (box.intersects(from, to)) {
                for (Object ring : rings) {
                    crossings(from, to, ((LineString) ring).getCoordinates(), lines.chainageM(end - 1), cuts);
                }
            }
        }
        cuts.headSet(0.0, true).clear();
        cuts.tailSet(lines.lengthM(line), true).clear();
        return cuts;
    }

    private static void crossings(
            Coordinate from, Coordinate to, Coordinate[] ring, double fromM, NavigableSet<Double> cuts) {
        LineIntersector meeting = new RobustLineIntersector();
        for (int i = 1; i < ring.length; i++) {
            meeting.computeIntersection(from, to, ring[i - 1], ring[i]);
            for (int point = 0; point < meeting.getIntersectionNum(); point++) {
                cuts.add(fromM + from.distance(meeting.getIntersection(point)));
            }
        }
    }
}
