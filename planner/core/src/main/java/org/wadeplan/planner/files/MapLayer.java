package org.wadeplan.planner.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.MapFile;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads a map layer, and its outlines into the round's coordinate system. */
record MapLayer(RoundFolder folder, String part, CoordinateSystem crs) {

    /** Each feature through {@code maker}, which gets the feature and its outline; broken ones are reported. */
    <T> Checked<List<T>> read(BiFunction<Feature, Geometry, T> maker, String codeColumn) {
        return readableLayer().then(layer -> features(layer, maker, codeColumn));
    }

    /** What is asked for of the layer, in the round's system, whatever kind of file it stands in. */
    private Checked<FeatureLayer> layer() {
        Path file = folder.path(part);
        return FileLimit.MAP
                .refusal(file, name())
                .<Checked<FeatureLayer>>map(Checked::failed)
                .orElseGet(() -> MapFile.read(file, folder.query(part), SourcePlace.file(name()), crs));
    }

    /** The layer without the features whose shape could not be read: that is reported already. */
    Checked<FeatureLayer> readableLayer() {
        Checked<FeatureLayer> layer = layer();
        return layer.hasErrors()
                ? layer.map(all -> new FeatureLayer(
                        all.shape(),
                        all.features().stream()
                                .filter(feature -> feature.geometry().isPresent())
                                .toList()))
                : layer;
    }

    private String name() {
        return folder.nameOf(part);
    }

    private <T> Checked<List<T>> features(
            FeatureLayer layer, BiFunction<Feature, Geometry, T> maker, String codeColumn) {
        List<T> made = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Feature feature : layer.features()) {
            fault(feature, codeColumn)
                    .ifPresentOrElse(
                            fault -> problems.add(broken(feature, fault)),
                            () -> made.add(
                                    maker.apply(feature, feature.geometry().orElseThrow())));
        }
        return Checked.of(List.copyOf(made), problems);
    }

    private static Optional<String> fault(Feature feature, String codeColumn) {
        if (feature.text(codeColumn).isEmpty()) {
            return Optional.of("has no " + codeColumn);
        }
        boolean noShape = feature.geometry().map(Geometry::isEmpty).orElse(true);
        return noShape ? Optional.of("has no outline") : Optional.empty();
    }

    private Problem broken(Feature feature, String what) {
        return Problem.error(
                "feature-broken",
                SourcePlace.part(name(), "feature " + feature.id()),
                "the feature " + what,
                "a code and an outline",
                "mend it in a map program");
    }
}
