package org.wadeplan.planner.pack.track;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
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
     * Writes all of them into a folder, under the names above.
     *
     * @return problems where names for the handheld are too long or clash: then there is no {@link #GPX}
     * @throws DiskException where one cannot be written
     */
    public List<Problem> writeAll(Path folder) throws DiskException {
        geoPackage(folder.resolve(GEOPACKAGE));
        reachesGeoJson(folder.resolve(REACHES_GEOJSON));
        stakesGeoJson(folder.resolve(STAKES_GEOJSON));
        return gpx(folder.resolve(GPX));
    }

    /**
     * Stakes and routes for a handheld.
     *
     * @return problems where names are too long or clash: then nothing is written
     */
    public List<Problem> gpx(Path file) throws DiskException {
        Checked<String> document = GpxWriter.document(
                ReachGpx.of(
                        round.header().title(), reaches, madeAt, round.header().stakeUncertaintyM()),
                SourcePlace.file(String.valueOf(file.getFileName())));
        if (document.value().isPresent()) {
            WholeFile.write(file, document.value().get());
        }
        return document.problems();
    }

    /** The layers reaches, stakes and streams. */
    public void geoPackage(Path file) throws DiskException {
        MapLayers layers = new MapLayers(round, reaches);
        new GeoPackageWriter(round.terrain().crs(), madeAt)
                .write(file, List.of(layers.reaches(), layers.stakes(), layers.streams()));
    }

    public void reachesGeoJson(Path file) throws DiskException {
        new GeoJsonWriter(round.terrain().crs())
                .write(file, new MapLayers(round, reaches).reaches().features());
    }

    public void stakesGeoJson(Path file) throws DiskException {
        new GeoJsonWriter(round.terrain().crs())
                .write(file, new MapLayers(round, reaches).stakes().features());
    }
}
