package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
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

/**
 * Makes the round's stream network of a map layer.
 *
 * <p>Nothing is repaired in silence. A suspected fault is an error that says which feature, what was found, what a repair
 * would assume and how to accept it. With the repair accepted it becomes a note. The network is there beside errors too,
 * with such lines as they are drawn, so that a map can show where the fault lies.
 */
public final class StreamReader {

    private final CoordinateSystem round;
    private final SourcePlace file;
    private final StreamHints hints;
    private final SuspectedFaults faults;

    /**
     * A reader for one file.
     *
     * @param round the system to measure in
     * @param file how problems name the file
     * @param hints what the round knows of its streams
     * @param accepted the repairs that a person has agreed to
     */
    public StreamReader(CoordinateSystem round, SourcePlace file, StreamHints hints, AcceptedRepairs accepted) {
        this.round = round;
        this.file = file;
        this.hints = hints;
        this.faults = new SuspectedFaults(accepted);
    }

    /** The network, with everything that is wrong or assumed. */
    public Checked<StreamNetwork> read(FeatureLayer layer) {
        Optional<String> crs = layer.shape().crs();
        if (crs.isEmpty()) {
            return Checked.failed(Problem.error(
                    "crs-missing",
                    file,
                    "the layer does not say in a code which coordinate system it is in",
                    "a system with an EPSG code, best the round's " + round.code(),
                    "set the layer's coordinate system in the map program and save it again"));
        }
        return round.from(crs.get(), file).then(reprojection -> read(layer, reprojection));
    }

    private Checked<StreamNetwork> read(FeatureLayer layer, Reprojection reprojection) {
        PieceReader reader = new PieceReader(file.file(), hints, faults);
        TreeMap<String, List<DrawnPiece>> byCode = new TreeMap<>();
        for (Feature feature : layer.features()) {
            moved(feature, reprojection)
                    .flatMap(reader::read)
                    .filter(this::inArea)
                    .map(piece -> SpikeCheck.check(piece, faults))
                    .ifPresent(piece -> byCode.computeIfAbsent(piece.code(), code -> new ArrayList<>())
                            .add(piece));
        }
        List<DrawnPiece> joined = new ArrayList<>();
        byCode.values().forEach(pieces -> joined.add(new PieceJoin(faults).join(pieces)));
        FlowCheck flow = new FlowCheck(joined, hints, faults);
        List<StreamLine> lines = new ArrayList<>();
        for (DrawnPiece piece : joined) {
            DrawnPiece facing = flow.check(piece);
            warnWhereItCrossesItself(facing);
            facing.catchment()
                    .ifPresent(catchment ->
                            lines.add(new StreamLine(facing.code(), facing.name(), catchment, facing.line())));
        }
        return Checked.of(new StreamNetwork(lines), faults.all(file));
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
