package org.wadeplan.planner.pack.track;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.GeoJsonWriter;
import org.wadeplan.geo.io.GeoPackageWriter;
import org.wadeplan.geo.io.GpxWriter;
import org.wadeplan.geo.io.WholeFile;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachGpx;
import org.wadeplan.planner.round.Round;

/** Writes the reaches for a handheld (GPX 1.1) and for map programs (GeoPackage, GeoJSON by RFC 7946). */
public final class TrackFiles {

    public static final String GPX = "tracks.gpx";
    public static final String GEOPACKAGE = "reaches.gpkg";
    public static final String REACHES_GEOJSON = "reaches.geojson";
    public static final String STAKES_GEOJSON = "stakes.geojson";

    private final Round round;
    private final List<Reach> reaches;
    private final Instant madeAt;

    public TrackFiles(Round round, List<Reach> reaches, Instant madeAt) {
        this.round = round;
        this.reaches = List.copyOf(reaches);
        this.madeAt = madeAt;
    }

    /**
     * Writes {@link #GPX}.
     *
     * @return problems where names are too long or clash: then there is no file
     * @throws DiskException where it cannot be written
     */
    public List<Problem> writeGpx(Path folder) throws DiskException {
        Checked<String> document = GpxWriter.document(
                ReachGpx.of(
                        round.header().title(), reaches, madeAt, round.header().stakeUncertaintyM()),
                SourcePlace.file(GPX));
        if (document.value().isPresent()) {
            WholeFile.write(folder.resolve(GPX), document.value().get());
        }
        return document.problems();
    }

    /**
     * Writes {@link #GEOPACKAGE} with the layers reaches, stakes and streams, and the two GeoJSON files.
     *
     * @throws DiskException where one cannot be written
     */
    public void writeMaps(Path folder) throws DiskException {
        MapLayers layers = new MapLayers(round, reaches);
        FeatureLayer lines = layers.reaches();
        FeatureLayer stakes = layers.stakes();
        new GeoPackageWriter(round.terrain().crs(), madeAt)
                .write(folder.resolve(GEOPACKAGE), List.of(lines, stakes, layers.streams()));
        GeoJsonWriter geoJson = new GeoJsonWriter(round.terrain().crs());
        geoJson.write(folder.resolve(REACHES_GEOJSON), lines.features());
        geoJson.write(folder.resolve(STAKES_GEOJSON), stakes.features());
    }
}
