package org.wadeplan.planner.reach;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.io.Feature;
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

/** Writes a report for map programs and for a handheld. Each file is written whole or not at all. */
public final class CandidateFiles {

    public static final String GEOPACKAGE = "candidates.gpkg";
    public static final String GEOJSON = "candidates.geojson";
    public static final String GPX = "candidates.gpx";

    private final Round round;
    private final CandidateReport report;
    private final Instant madeAt;

    public CandidateFiles(Round round, CandidateReport report, Instant madeAt) {
        this.round = round;
        this.report = report;
        this.madeAt = madeAt;
    }

    /**
     * Writes all three into a folder that exists: the GeoPackage with the layers candidates, stakes and rejected; the
     * candidates as GeoJSON; stakes and routes as GPX.
     *
     * @return problems where names for the handheld are too long or clash: then there is no {@link #GPX}
     * @throws DiskException where one cannot be written
     */
    public List<Problem> writeAll(Path folder) throws DiskException {
        CoordinateSystem system = round.terrain().crs();
        CandidateLayers layers =
                new CandidateLayers(report, system.code(), round.header().stakeUncertaintyM());
        Checked<String> gpx = gpx();
        new GeoPackageWriter(system, madeAt)
                .write(folder.resolve(GEOPACKAGE), List.of(layers.candidates(), layers.stakes(), layers.rejected()));
        List<Feature> shown = new ArrayList<>(layers.candidates().features());
        new GeoJsonWriter(system).write(folder.resolve(GEOJSON), shown);
        if (gpx.value().isPresent()) {
            WholeFile.write(folder.resolve(GPX), gpx.value().get());
        }
        return gpx.problems();
    }

    private Checked<String> gpx() {
        List<Reach> reaches =
                report.candidates().stream().map(ProposedReach::reach).toList();
        return GpxWriter.document(
                ReachGpx.of(
                        round.header().title() + ", candidates",
                        reaches,
                        madeAt,
                        round.header().stakeUncertaintyM()),
                SourcePlace.file(GPX));
    }
}
