package org.wadeplan.geo.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads a layer from whichever kind of map file a person has, into the round's system. Never writes to it. */
public final class MapFile {

    private MapFile() {}

    /**
     * The layer of that name in a GeoPackage, or all of another file, as it is but in the round's system.
     *
     * @param file by its ending GeoJSON ({@code .geojson}, {@code .json}) or a shapefile ({@code .shp}); anything else must
     *     be a GeoPackage
     * @param layer name of the layer in a GeoPackage
     * @param place how problems name the file
     * @param round the round's metric system
     */
    public static Checked<FeatureLayer> read(Path file, String layer, SourcePlace place, CoordinateSystem round) {
        return read(file, LayerQuery.of(layer), place, round);
    }

    /** The features that are asked for, in memory. */
    public static Checked<FeatureLayer> read(Path file, LayerQuery query, SourcePlace place, CoordinateSystem round) {
        List<Feature> features = new ArrayList<>();
        return each(file, query, place, round, features::add).map(shape -> new FeatureLayer(shape, features));
    }

    /**
     * Hands over the features that are asked for one after the other, so that a national file need not fit into memory.
     *
     * <p>Where the layer is not named, it is the one called as the part of the round, or the only one with shapes.
     *
     * @param sink gets every feature in the round's system, those without a shape too
     * @return what the layer is, our columns first, with every problem; where there are errors, what the sink got is not
     *     all
     */
    public static Checked<LayerShape> each(
            Path file, LayerQuery query, SourcePlace place, CoordinateSystem round, Consumer<Feature> sink) {
        Selection selection = new Selection(query, place, round, isGeoJson(file), sink);
        Checked<LayerShape> read = all(file, query, place, round, selection);
        Checked<LayerShape> done = selection.done().with(read.problems());
        return read.value().isEmpty() ? Checked.failed(done.problems()) : done;
    }

    /**
     * Roughly the middle of a layer on WGS 84, as its file states it, whatever system it is in; for finding a system that
     * suits the data. Empty where that cannot be told.
     */
    public static Optional<LonLat> middle(Path file, LayerQuery query, SourcePlace place) {
        Optional<Extent> extent;
        if (isGeoJson(file)) {
            extent = GeoJsonReader.extent(file);
        } else if (isShapefile(file)) {
            extent = new ShapefileReader(file, place).extent();
        } else {
            GeoPackageReader reader = new GeoPackageReader(file, place);
            extent = layerName(reader, query, place).then(reader::extent).value();
        }
        return extent.flatMap(stated -> stated.middle(query.mapping().crs()));
    }

    private static Checked<LayerShape> all(
            Path file, LayerQuery query, SourcePlace place, CoordinateSystem round, Selection selection) {
        if (isGeoJson(file)) {
            return geoJson(file, query, place, round, selection);
        }
        if (isShapefile(file)) {
            return new ShapefileReader(file, place).each(selection);
        }
        GeoPackageReader reader = new GeoPackageReader(file, place);
        return layerName(reader, query, place).then(layer -> reader.each(layer, selection, Optional.empty()));
    }

    private static boolean isGeoJson(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".geojson") || name.endsWith(".json");
    }

    private static boolean isShapefile(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".shp");
    }

    private static Checked<LayerShape> geoJson(
            Path file, LayerQuery query, SourcePlace place, CoordinateSystem round, Selection selection) {
        Checked<LayerShape> read =
                new GeoJsonReader(file, place, round, query.mapping().crs()).each(selection);
        // A file that states its system, or is stated to be in one, has its note already.
        StatedSystem degrees = StatedSystem.code("EPSG:4326");
        return read.problems().isEmpty() && query.mapping().crs().isEmpty()
                ? read.with(SystemNotes.note(place, Optional.of(degrees), degrees, round))
                : read;
    }

    private static Checked<String> layerName(GeoPackageReader reader, LayerQuery query, SourcePlace place) {
        return query.layer().map(Checked::of).orElseGet(() -> reader.shapeLayers()
                .then(names -> chosen(names, query, place)));
    }

    private static Checked<String> chosen(List<String> names, LayerQuery query, SourcePlace place) {
        Optional<String> called = names.stream()
                .filter(name -> name.equalsIgnoreCase(query.part()))
                .findFirst();
        if (called.isPresent()) {
            return Checked.of(called.get());
        }
        if (names.size() == 1) {
            return Checked.of(
                    names.get(0),
                    List.of(Problem.note(
                            "layer-taken",
                            place,
                            "no layer is called " + query.part() + "; its only layer, " + names.get(0) + ", was read",
                            "",
                            "nothing if that is right")));
        }
        return Checked.failed(Problem.error(
                "layer-not-clear",
                place,
                "none of its layers is called " + query.part(),
                names.isEmpty()
                        ? "a file with a layer of shapes; this one has none"
                        : "one of " + String.join(", ", names),
                "name the layer in " + query.settings().file() + ": \"files\": {\"" + query.part() + "\": \""
                        + place.file() + "#" + (names.isEmpty() ? "LAYER" : names.get(0)) + "\"}"));
    }
}
