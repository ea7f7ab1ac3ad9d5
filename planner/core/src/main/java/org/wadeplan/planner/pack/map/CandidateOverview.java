package org.wadeplan.planner.pack.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.pack.map.Drawing.Anchor;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Terrain;

/**
 * Where all candidates of a search lie: the streams, a ring with the rank at the start of each candidate, the sites as
 * crosses. Rings that would cover each other are one ring with several ranks.
 */
public final class CandidateOverview {

    private static final double WIDTH_MM = 182;
    private static final double HEIGHT_MM = 104;
    private static final double STRIP_MM = 11;
    private static final double MARGIN_MM = 9;
    private static final double RING_MM = 1.5;
    private static final double TOGETHER_MM = 5;
    private static final double CROSS_MM = 1;

    /** Bends smaller than this on the paper, in millimetres, can't be seen. */
    private static final double UNSEEN_MM = 0.1;

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final Terrain terrain;
    private final MapFrame frame;
    private final Drawing drawing = new Drawing(WIDTH_MM, HEIGHT_MM + STRIP_MM);

    private CandidateOverview(Terrain terrain, Envelope shown) {
        this.terrain = terrain;
        this.frame = MapFrame.around(shown, WIDTH_MM, HEIGHT_MM, MARGIN_MM);
    }

    /** Candidates whose starts fall together on the paper. */
    private record Ring(Coordinate at, List<Integer> ranks) {}

    /**
     * The map, 182 by 115 mm.
     *
     * @param candidates best first; their ranks are their places in the list, from 1
     * @param sites the round's own
     */
    public static Drawing of(Terrain terrain, List<Reach> candidates, List<Site> sites) {
        CandidateOverview map = new CandidateOverview(terrain, extent(terrain, candidates));
        map.streams();
        map.sites(sites);
        map.rings(candidates);
        new MapFurniture(map.frame, map.drawing, HEIGHT_MM).draw();
        return map.drawing;
    }

    /** Every stream that holds a candidate, whole; all streams where there is no candidate. */
    private static Envelope extent(Terrain terrain, List<Reach> candidates) {
        List<String> held = candidates.stream().map(Reach::stream).distinct().toList();
        Envelope extent = new Envelope();
        terrain.network().lines().stream()
                .filter(line -> held.isEmpty() || held.contains(line.code()))
                .forEach(line -> extent.expandToInclude(line.line().getEnvelopeInternal()));
        return extent;
    }

    private void streams() {
        Geometry window = SHAPES.toGeometry(frame.ground());
        double unseenM = UNSEEN_MM * frame.scale() / 1000;
        terrain.network().lines().stream()
                .filter(stream -> frame.ground().intersects(stream.line().getEnvelopeInternal()))
                .forEach(stream -> {
                    LineString thinned = (LineString) DouglasPeuckerSimplifier.simplify(stream.line(), unseenM);
                    Geometry seen = thinned.intersection(window);
                    for (int i = 0; i < seen.getNumGeometries(); i++) {
                        drawing.line(paper(seen.getGeometryN(i).getCoordinates()), 0.3);
                    }
                });
    }

    private void sites(List<Site> sites) {
        for (Site site : sites) {
            if (frame.shows(site.start())) {
                Coordinate at = frame.paper(site.start());
                drawing.segment(at.x - CROSS_MM, at.y, at.x + CROSS_MM, at.y, 0.4);
                drawing.segment(at.x, at.y - CROSS_MM, at.x, at.y + CROSS_MM, 0.4);
                drawing.label(at.x - RING_MM, at.y + 2.2, 7.5, Anchor.LEFT_OF, site.id());
            }
        }
    }

    private void rings(List<Reach> candidates) {
        List<Ring> rings = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            Coordinate at = frame.paper(candidates.get(i).start().at());
            int rank = i + 1;
            rings.stream()
                    .filter(ring -> ring.at().distance(at) < TOGETHER_MM)
                    .findFirst()
                    .ifPresentOrElse(
                            ring -> ring.ranks().add(rank),
                            () -> rings.add(new Ring(at, new ArrayList<>(List.of(rank)))));
        }
        for (Ring ring : rings) {
            drawing.ring(ring.at().x, ring.at().y, RING_MM, 0.5);
            drawing.boldLabel(ring.at().x + RING_MM + 0.8, ring.at().y, 10, Anchor.RIGHT_OF, words(ring.ranks()));
        }
    }

    /** {@code 1, 4, 7}; of more than four the first three and how many more. */
    private static String words(List<Integer> ranks) {
        List<String> shown = ranks.stream().map(String::valueOf).toList();
        return ranks.size() <= 4
                ? String.join(", ", shown)
                : String.join(", ", shown.subList(0, 3)) + " and " + (ranks.size() - 3) + " more";
    }

    private List<Coordinate> paper(Coordinate[] places) {
        return Arrays.stream(places).map(frame::paper).toList();
    }
}
