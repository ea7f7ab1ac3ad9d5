package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.crs.Reprojection;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** One reading of one layer: feature by feature, then stream by stream, then across streams. */
final class StreamReading {

    private final CoordinateSystem round;
    private final SourcePlace file;
    private final StreamHints hints;
    private final StreamRules rules;
    private final SuspectedFaults faults;

    StreamReading(
            CoordinateSystem round, SourcePlace file, StreamHints hints, StreamRules rules, SuspectedFaults faults) {
        this.round = round;
        this.file = file;
        this.hints = hints;
        this.rules = rules;
        this.faults = faults;
    }

    Checked<StreamNetwork> read(FeatureLayer layer, Reprojection reprojection) {
        List<DrawnPiece> joined = new ArrayList<>();
        byCode(layer, reprojection).values().forEach(pieces -> joined.add(new PieceJoin(faults).join(pieces)));
        List<DrawnPiece> closed = new GapCheck(joined, rules, faults).closed();
        List<DrawnPiece> directed = directed(closed);
        List<StreamLine> lines = new ArrayList<>();
        for (DrawnPiece piece : directed) {
            warnWhereItCrossesItself(piece);
            piece.catchment()
                    .ifPresent(catchment ->
                            lines.add(new StreamLine(piece.code(), piece.name(), catchment, piece.line())));
        }
        StreamGraph graph = StreamNoding.graph(PieceLines.of(directed), rules.snapToleranceM());
        new LoopCheck(graph, directed, faults).check();
        new CrossingCheck(graph, directed, rules, faults).check();
        return Checked.of(new StreamNetwork(lines, rules.snapToleranceM()), faults.all(file));
    }

    private Map<String, List<DrawnPiece>> byCode(FeatureLayer layer, Reprojection reprojection) {
        PieceReader reader = new PieceReader(file.file(), hints, faults);
        DuplicateCheck duplicates = new DuplicateCheck(faults);
        TreeMap<String, List<DrawnPiece>> byCode = new TreeMap<>();
        for (Feature feature : layer.features()) {
            moved(feature, reprojection)
                    .flatMap(reader::read)
                    .filter(this::inArea)
                    .map(piece -> SpikeCheck.check(piece, faults))
                    .filter(duplicates::keeps)
                    .ifPresent(piece -> byCode.computeIfAbsent(piece.code(), code -> new ArrayList<>())
                            .add(piece));
        }
        return byCode;
    }

    private List<DrawnPiece> directed(List<DrawnPiece> pieces) {
        FlowCheck flow = new FlowCheck(pieces, hints, faults);
        List<DrawnPiece> facing = flow.checked();
        List<DrawnPiece> voted = new FlowVote(facing, rules, faults).decided(flow.undecided());
        return new DirectionCheck(voted, rules, faults).checked();
    }

    private Optional<Feature> moved(Feature feature, Reprojection reprojection) {
        try {
            return Optional.of(feature.geometry()
                    .map(shape -> feature.withGeometry(reprojection.apply(shape)))
                    .orElse(feature));
        } catch (IllegalArgumentException outside) {
            faults.add(outOfArea(file.row("feature " + feature.id()), "some of its coordinates"));
            return Optional.empty();
        }
    }

    private boolean inArea(DrawnPiece piece) {
        Coordinate first = piece.line().getCoordinateN(0);
        boolean inside = round.inArea(new MetricPoint(first.x, first.y));
        if (!inside) {
            faults.add(outOfArea(piece.place(), "coordinates " + first.x + ", " + first.y));
        }
        return inside;
    }

    private Problem outOfArea(SourcePlace place, String what) {
        return Problem.error(
                "stream-out-of-area",
                place,
                what + " lie outside the area of " + round.words(),
                "coordinates in the round's area, easting first",
                "check the layer's coordinate system, and that easting and northing are not swapped");
    }

    private void warnWhereItCrossesItself(DrawnPiece piece) {
        if (!piece.line().isSimple()) {
            faults.add(Problem.warning(
                    "stream-crosses-itself",
                    piece.place(),
                    "the line crosses or touches itself: near that place a point can belong to two chainages",
                    "a line that does not cross itself",
                    "look at it on the map and correct it if it is a slip of drawing"));
        }
    }
}
