package org.wadeplan.geo.io;

import java.nio.file.Path;
import java.util.Locale;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads a layer from whichever kind of map file a person has. */
public final class MapFile {

    private MapFile() {}

    /**
     * The layer of a GeoPackage, in its own coordinate system, or all of a GeoJSON file, in the round's.
     *
     * @param file by its ending, {@code .geojson} or {@code .json}, GeoJSON; anything else must be a GeoPackage
     * @param layer name of the layer in a GeoPackage
     * @param place how problems name the file
     * @param round the round's metric system
     */
    public static Checked<FeatureLayer> read(Path file, String layer, SourcePlace place, CoordinateSystem round) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        boolean geoJson = name.endsWith(".geojson") || name.endsWith(".json");
        return geoJson ? new GeoJsonReader(file, place, round).read() : new GeoPackageReader(file, place).read(layer);
    }
}
