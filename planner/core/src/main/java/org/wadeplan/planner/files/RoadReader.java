package org.wadeplan.planner.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.access.Roads;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads the round's roads and tracks, which it may do without. */
record RoadReader(RoundFolder folder, CoordinateSystem crs) {

    /** Empty where the round has none; no value where the file that should hold them could not be read. */
    Checked<Optional<Roads>> read() {
        return folder.wants(RoundFolder.ROADS)
                ? new MapLayer(folder, RoundFolder.ROADS, crs)
                        .readableLayer()
                        .then(this::roads)
                        .map(Optional::of)
                : Checked.of(Optional.empty());
    }

    private Checked<Roads> roads(FeatureLayer layer) {
        LineSetBuilder lines = new LineSetBuilder();
        List<String> kinds = new ArrayList<>();
        int others = 0;
        for (Feature feature : layer.features()) {
            int before = lines.lineCount();
            feature.geometry().ifPresent(shape -> add(lines, name(feature), shape));
            int added = lines.lineCount() - before;
            others += added == 0 ? 1 : 0;
            for (int i = 0; i < added; i++) {
                kinds.add(feature.text("kind").orElse(""));
            }
        }
        int features = layer.features().size();
        if (lines.lineCount() == 0) {
            return Checked.failed(without(features));
        }
        return Checked.of(
                new Roads(lines.build(), kinds), others == 0 ? List.of() : List.of(notLines(others, features)));
    }

    /** Most tracks have no name. */
    private static String name(Feature feature) {
        return feature.text("road").or(() -> feature.text("name")).orElseGet(() -> "road " + feature.id());
    }

    private static void add(LineSetBuilder lines, String name, Geometry shape) {
        for (int part = 0; part < shape.getNumGeometries(); part++) {
            if (shape.getGeometryN(part) instanceof LineString line && isFinite(line)) {
                lines.add(name, line);
            }
        }
    }

    private static boolean isFinite(LineString line) {
        return Arrays.stream(line.getCoordinates()).allMatch(at -> Double.isFinite(at.x) && Double.isFinite(at.y));
    }

    private Problem without(int features) {
        return Problem.error(
                "roads-without-lines",
                SourcePlace.file(folder.nameOf(RoundFolder.ROADS)),
                features == 0
                        ? "the layer is empty"
                        : "none of the layer's " + features + " features is a line with a length",
                "roads and tracks as lines",
                "name the file and layer that hold them, or take it out of files in round.json");
    }

    private Problem notLines(int others, int features) {
        return Problem.warning(
                "road-not-a-line",
                SourcePlace.file(folder.nameOf(RoundFolder.ROADS)),
                others + " of its " + features + " features " + (others == 1 ? "is" : "are")
                        + " no line with a length and left out",
                "roads and tracks as lines",
                "nothing, if no road is missing");
    }
}
