package org.wadeplan.planner.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.Reprojection;
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
        return readableLayer()
                .then(layer -> reprojection(layer).then(move -> features(layer, move, maker, codeColumn)));
    }

    /** The layer as it stands in its file: GeoPackage, or GeoJSON by the ending of the file's name. */
    private Checked<FeatureLayer> layer() {
        String ending = name().toLowerCase(Locale.ROOT);
        boolean text = ending.endsWith(".geojson") || ending.endsWith(".json");
        Path file = folder.path(part);
        Optional<Problem> unfit = (text ? FileLimit.TEXT : FileLimit.MAP).refusal(file, name());
        if (unfit.isPresent()) {
            return Checked.failed(unfit.get());
        }
        return MapFile.read(file, part, SourcePlace.file(name()), crs);
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

    private Checked<Reprojection> reprojection(FeatureLayer layer) {
        return layer.shape()
                .crs()
                .map(code -> crs.from(code, SourcePlace.file(name())))
                .orElseGet(() -> Checked.of(
                        Reprojection.NONE,
                        List.of(Problem.warning(
                                "crs-not-stated",
                                SourcePlace.file(name()),
                                "the layer does not state its coordinate system; " + crs.code() + " was assumed",
                                "a layer with its coordinate system",
                                "save it again with its coordinate system"))));
    }

    private <T> Checked<List<T>> features(
            FeatureLayer layer, Reprojection move, BiFunction<Feature, Geometry, T> maker, String codeColumn) {
        List<T> made = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Feature feature : layer.features()) {
            Optional<String> fault = fault(feature, codeColumn);
            if (fault.isPresent()) {
                problems.add(broken(feature, fault.get()));
            } else {
                moved(feature, move)
                        .ifPresentOrElse(
                                shape -> made.add(maker.apply(feature, shape)),
                                () -> problems.add(
                                        broken(feature, "has a place that cannot be shown in " + crs.code())));
            }
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

    private Optional<Geometry> moved(Feature feature, Reprojection move) {
        try {
            return feature.geometry().map(move::apply);
        } catch (IllegalArgumentException outside) {
            return Optional.empty();
        }
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
