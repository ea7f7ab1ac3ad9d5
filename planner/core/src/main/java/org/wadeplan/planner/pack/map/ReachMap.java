package org.wadeplan.planner.pack.map;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.geo.reach.SubReach;
import org.wadeplan.planner.pack.map.Drawing.Anchor;
import org.wadeplan.planner.round.Barrier;
import org.wadeplan.planner.round.Terrain;

/**
 * The map of one reach: the stream with its flow, stakes, sub-reaches, barriers, parcels, grid, scale and north.
 *
 * <p>North is grid north. Land without a plain yes is hatched and named; nothing is told by colour.
 */
public final class ReachMap {

    /** Room that the word START and a stake's name take in bold at 10 pt, with a little air. */
    private static final double START_LABEL_MM = 34;

    private static final double WIDTH_MM = 182;
    private static final double HEIGHT_MM = 122;
    private static final double STRIP_MM = 11;
    private static final double MARGIN_MM = 13;
    private static final double STAKE_TICK_MM = 2.2;
    private static final double ARROW_MM = 8;
    private static final double LEADER_MM = 15;
    private static final double RULED_OUT_MM = 1.6;
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final Terrain terrain;
    private final Reach reach;
    private final MapFrame frame;
    private final Drawing drawing = new Drawing(WIDTH_MM, HEIGHT_MM + STRIP_MM);

    private ReachMap(Terrain terrain, Reach reach) {
        this.terrain = terrain;
        this.reach = reach;
        this.frame = MapFrame.around(reach.line().getEnvelopeInternal(), WIDTH_MM, HEIGHT_MM, MARGIN_MM);
    }

    /** The map, 182 by 133 mm: the ground, and a strip with scale and north below it. */
    public static Drawing of(Terrain terrain, Reach reach) {
        return of(terrain, reach, List.of());
    }

    /**
     * The same, with the stretches of stream that a search ruled out drawn as broad dashes.
     *
     * @param ruledOut lines in the round's metric system; those off the map are left out
     */
    public static Drawing of(Terrain terrain, Reach reach, List<LineString> ruledOut) {
        ReachMap map = new ReachMap(terrain, reach);
        new ParcelHatch(map.frame, map.drawing, reach.line()).draw(terrain.parcels());
        map.streams();
        map.ruledOut(ruledOut);
        map.reachLine();
        map.stakes();
        map.barriers();
        new MapFurniture(map.frame, map.drawing, HEIGHT_MM).draw();
        return map.drawing;
    }

    private void streams() {
        Geometry window = SHAPES.toGeometry(frame.ground());
        terrain.network().lines().forEach(stream -> {
            Geometry seen = stream.line().intersection(window);
            for (int i = 0; i < seen.getNumGeometries(); i++) {
                drawing.line(paper(seen.getGeometryN(i).getCoordinates()), 0.3);
            }
        });
        flowArrows();
    }

    private void ruledOut(List<LineString> stretches) {
        Geometry window = SHAPES.toGeometry(frame.ground());
        for (LineString stretch : stretches) {
            Geometry seen = stretch.intersection(window);
            for (int i = 0; i < seen.getNumGeometries(); i++) {
                List<Coordinate> points = paper(seen.getGeometryN(i).getCoordinates());
                if (points.size() > 1) {
                    drawing.dashed(points, RULED_OUT_MM, "1 1.2");
                }
            }
        }
    }

    /** Arrows beside the reach on the side of the letters, pointing downstream. */
    private void flowArrows() {
        for (int i = 1; i < reach.subReaches().size(); i += 3) {
            Coordinate upper = frame.paper(reach.stakes().get(i + 1).at());
            Coordinate lower = frame.paper(reach.stakes().get(i).at());
            double flow = Angle.angle(upper, lower);
            arrow(polar(upper, flow - bankSide(), ARROW_MM), polar(lower, flow - bankSide(), ARROW_MM));
        }
    }

    private void arrow(Coordinate from, Coordinate to) {
        drawing.line(List.of(from, to), 0.4);
        double back = Angle.angle(to, from);
        for (double spread : new double[] {-0.4, 0.4}) {
            drawing.line(
                    List.of(
                            to,
                            new Coordinate(to.x + 2.2 * Math.cos(back + spread), to.y + 2.2 * Math.sin(back + spread))),
                    0.4);
        }
    }

    private void reachLine() {
        drawing.line(paper(reach.line().getCoordinates()), 1.1);
    }

    private void stakes() {
        List<Stake> stakes = reach.stakes();
        for (int i = 0; i < stakes.size(); i++) {
            Coordinate here = frame.paper(stakes.get(i).at());
            Coordinate lower = frame.paper(stakes.get(Math.max(0, i - 1)).at());
            Coordinate upper =
                    frame.paper(stakes.get(Math.min(stakes.size() - 1, i + 1)).at());
            double flow = Angle.angle(upper, lower);
            double side = bankSide();
            Coordinate foot = polar(here, flow + side, STAKE_TICK_MM);
            drawing.line(List.of(polar(here, flow - side, STAKE_TICK_MM), foot), 0.5);
            Coordinate label = polar(here, flow + side, STAKE_TICK_MM + 1.5);
            drawing.label(
                    label.x,
                    label.y,
                    9,
                    label.x >= here.x ? Anchor.RIGHT_OF : Anchor.LEFT_OF,
                    String.format(Locale.ROOT, "%.0f m", stakes.get(i).upstreamM()));
        }
        reach.subReaches().forEach(this::letter);
        startMark();
    }

    private void letter(SubReach piece) {
        Coordinate lower = frame.paper(piece.downstream().at());
        Coordinate upper = frame.paper(piece.upstream().at());
        Coordinate middle = new Coordinate((lower.x + upper.x) / 2, (lower.y + upper.y) / 2);
        Coordinate at = polar(middle, Angle.angle(upper, lower) - bankSide(), 3.6);
        drawing.boldLabel(at.x, at.y, 11, Anchor.CENTRED, String.valueOf(piece.letter()));
    }

    private void startMark() {
        Coordinate at = frame.paper(reach.start().at());
        drawing.ring(at.x, at.y, 1.6, 0.5);
        Coordinate name = polar(at, alongFlow() - bankSide(), 4);
        Anchor side = sideWithRoom(name.x, name.x > at.x ? Anchor.RIGHT_OF : Anchor.LEFT_OF);
        boolean acrossTheMark = (side == Anchor.RIGHT_OF) != (name.x > at.x);
        drawing.boldLabel(
                name.x,
                acrossTheMark ? at.y + 5 : name.y,
                10,
                side,
                "START " + reach.start().name());
    }

    /** The wanted side, or the other one where the label would run off the paper. */
    private Anchor sideWithRoom(double xMm, Anchor wanted) {
        if (wanted == Anchor.LEFT_OF && xMm < START_LABEL_MM) {
            return Anchor.RIGHT_OF;
        }
        double widthMm = frame.mm(frame.ground().getWidth());
        return wanted == Anchor.RIGHT_OF && xMm > widthMm - START_LABEL_MM ? Anchor.LEFT_OF : wanted;
    }

    private void barriers() {
        for (Barrier barrier : terrain.barriers()) {
            if (frame.shows(barrier.at())) {
                Coordinate at = frame.paper(barrier.at());
                drawing.segment(at.x - 2, at.y - 2, at.x + 2, at.y + 2, 0.6);
                drawing.segment(at.x - 2, at.y + 2, at.x + 2, at.y - 2, 0.6);
                Coordinate name = polar(at, alongFlow() - bankSide(), LEADER_MM);
                drawing.segment(at.x, at.y, name.x, name.y, 0.2);
                drawing.boldLabel(name.x, name.y, 10, name.x > at.x ? Anchor.RIGHT_OF : Anchor.LEFT_OF, barrier.kind());
            }
        }
    }

    private double alongFlow() {
        return Angle.angle(
                frame.paper(reach.end().at()), frame.paper(reach.start().at()));
    }

    /** On paper y grows downward, so looking downstream the true left bank is turned minus a right angle. */
    private double bankSide() {
        return reach.stakeBank() == Bank.LEFT ? -Math.PI / 2 : Math.PI / 2;
    }

    private static Coordinate polar(Coordinate from, double angleRad, double mm) {
        return new Coordinate(from.x + mm * Math.cos(angleRad), from.y + mm * Math.sin(angleRad));
    }

    private List<Coordinate> paper(Coordinate[] places) {
        return Arrays.stream(places).map(frame::paper).toList();
    }
}
