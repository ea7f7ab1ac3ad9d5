package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
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

/** The stretches of lines that lie on land to keep off, found from where the line crosses the land's outline. */
final class LandBlocks {

    /** Quarter circles of a widened outline in so many pieces: within 0.2 % of the distance. */
    private static final int QUARTER_PIECES = 16;

    private record Plot(int hindrance, Envelope box, List<Coordinate[]> outline, IndexedPointInAreaLocator locator) {}

    private final LineParts parts;
    private final LineSet lines;
    private final STRtree plots = new STRtree();
    private final boolean none;

    LandBlocks(LineParts parts, List<LandToClear> land, int firstHindrance) {
        this.parts = parts;
        this.lines = parts.lines();
        this.none = land.isEmpty();
        for (int i = 0; i < land.size(); i++) {
            Geometry area = land.get(i).clearM() > 0
                    ? land.get(i).area().buffer(land.get(i).clearM(), QUARTER_PIECES)
                    : land.get(i).area();
            if (!area.isEmpty()) {
                plots.insert(area.getEnvelopeInternal(), plot(firstHindrance + i, area));
            }
        }
        plots.build();
    }

    private static Plot plot(int hindrance, Geometry area) {
        List<Coordinate[]> outline = new ArrayList<>();
        for (Object ring : LinearComponentExtracter.getLines(area)) {
            outline.add(((LineString) ring).getCoordinates());
        }
        return new Plot(hindrance, area.getEnvelopeInternal(), outline, new IndexedPointInAreaLocator(area));
    }

    /** All blocks on one line. */
    void of(int line, Consumer<Block> found) {
        if (none) {
            return;
        }
        Envelope box = new Envelope();
        for (int vertex = lines.firstVertex(line); vertex < lines.endVertex(line); vertex++) {
            box.expandToInclude(lines.eastM(vertex), lines.northM(vertex));
        }
        List<Plot> near = new ArrayList<>();
        for (Object plot : plots.query(box)) {
            near.add((Plot) plot);
        }
        near.sort((a, b) -> a.hindrance() - b.hindrance());
        near.forEach(plot -> onPlot(line, plot, found));
    }

    private void onPlot(int line, Plot plot, Consumer<Block> found) {
        List<Double> cuts = cuts(line, plot);
        double fromM = -1;
        for (int i = 1; i < cuts.size(); i++) {
            double lowM = cuts.get(i - 1);
            double highM = cuts.get(i);
            boolean inside = highM > lowM && holds(plot, lines.at(line, (lowM + highM) / 2));
            if (inside && fromM < 0) {
                fromM = lowM;
            }
            boolean ends = fromM >= 0 && (i == cuts.size() - 1 || (highM > lowM && !inside));
            if (ends) {
                double toM = inside ? highM : lowM;
                parts.split(
                        new LineStretch(line, fromM, toM),
                        (run, from, to) -> found.accept(Block.covering(run, from, to, plot.hindrance())));
                fromM = -1;
            }
        }
    }

    private static boolean holds(Plot plot, MetricPoint at) {
        return plot.locator().locate(new Coordinate(at.eastM(), at.northM())) != Location.EXTERIOR;
    }

    private List<Double> cuts(int line, Plot plot) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, lines.lengthM(line)));
        for (int end = lines.firstVertex(line) + 1; end < lines.endVertex(line); end++) {
            Coordinate from = new Coordinate(lines.eastM(end - 1), lines.northM(end - 1));
            Coordinate to = new Coordinate(lines.eastM(end), lines.northM(end));
            if (plot.box().intersects(from, to)) {
                double startM = lines.chainageM(end - 1);
                double lengthM = lines.chainageM(end) - startM;
                for (Coordinate[] ring : plot.outline()) {
                    for (int i = 1; i < ring.length; i++) {
                        crossing(from, to, ring[i - 1], ring[i], share -> cuts.add(startM + share * lengthM));
                    }
                }
            }
        }
        cuts.sort(null);
        return cuts;
    }

    /** Share along the first segment at which the second crosses or touches it; parallel ones do not. */
    private static void crossing(Coordinate a, Coordinate b, Coordinate c, Coordinate d, Consumer<Double> found) {
        double cross = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
        if (cross == 0) {
            return;
        }
        double share = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / cross;
        double other = ((c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x)) / cross;
        if (share >= 0 && share <= 1 && other >= 0 && other <= 1) {
            found.accept(share);
        }
    }
}
