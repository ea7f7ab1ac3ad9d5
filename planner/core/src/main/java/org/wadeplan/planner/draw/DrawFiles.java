package org.wadeplan.planner.draw;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.wadeplan.geo.io.GeoJsonWriter;
import org.wadeplan.geo.io.GeoPackageWriter;
import org.wadeplan.geo.io.GpxContent;
import org.wadeplan.geo.io.GpxWriter;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.pack.StagedFolder;
import org.wadeplan.planner.plan.PlanJson;
import org.wadeplan.planner.round.Round;

/** Writes a draw for map programs and handhelds, and the record that lets anyone repeat it. */
public final class DrawFiles {

    /** The record: request, frame, strata, places, weights. */
    public static final String RECORD = "draw.json";

    public static final String GEOPACKAGE = "draw.gpkg";
    public static final String GEOJSON = "draw.geojson";
    public static final String GPX = "draw.gpx";

    private DrawFiles() {}

    /**
     * Writes all four, or none: they are made in a temporary folder first. The same round, request and time give the same
     * bytes.
     *
     * @param folder made where it is missing; other files in it stay
     * @param madeAt stated as the time of the content
     * @return names of the files
     * @throws DiskException where the folder cannot be written to
     */
    public static List<String> write(Round round, RoundDraw draw, Path folder, Instant madeAt) throws DiskException {
        DrawLayers layers =
                new DrawLayers(round.terrain().crs(), round.terrain().network(), draw);
        try (StagedFolder stage = StagedFolder.beside(folder)) {
            stage.write(RECORD, PlanJson.textOf(draw).getBytes(StandardCharsets.UTF_8));
            new GeoPackageWriter(round.terrain().crs(), madeAt)
                    .write(stage.folder().resolve(GEOPACKAGE), List.of(layers.places(), layers.reaches()));
            new GeoJsonWriter(round.terrain().crs())
                    .write(stage.folder().resolve(GEOJSON), layers.places().features());
            stage.write(GPX, gpx(round, draw, madeAt).getBytes(StandardCharsets.UTF_8));
            stage.publish();
        }
        return List.of(RECORD, GEOPACKAGE, GEOJSON, GPX);
    }

    private static String gpx(Round round, RoundDraw draw, Instant madeAt) {
        List<GpxContent.Waypoint> points = draw.places().stream()
                .map(place -> new GpxContent.Waypoint(place.code(), words(place), place.lonLat()))
                .toList();
        String description = String.format(
                Locale.ROOT,
                "Places drawn with seed %d, each %s of a reach; WGS 84",
                draw.request().seed(),
                draw.request().point().words());
        Checked<String> document = GpxWriter.document(
                new GpxContent(round.header().title(), description, madeAt, points, List.of()), SourcePlace.file(GPX));
        return document.value()
                .orElseThrow(() -> new IllegalStateException("Codes of places are short and differ: "
                        + document.problems().get(0).sentence()));
    }

    private static String words(DrawnPlace place) {
        String use = place.standsInFor().map(code -> "visit for " + code).orElse(place.use());
        return place.stream() + ", " + place.role() + " " + place.turn() + " of " + place.stratum() + ", " + use;
    }
}
