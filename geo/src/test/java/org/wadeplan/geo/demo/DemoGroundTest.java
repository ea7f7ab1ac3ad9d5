package org.wadeplan.geo.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.access.Access;
import org.wadeplan.geo.access.AccessPlanner;
import org.wadeplan.geo.access.RoadCrossing;
import org.wadeplan.geo.access.RoadCrossings;
import org.wadeplan.geo.access.Roads;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.lines.PackedSegmentIndex;
import org.wadeplan.geo.lines.SegmentIndex.Snap;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.terrain.ElevationFile;
import org.wadeplan.geo.terrain.ElevationGrid;
import org.wadeplan.geo.terrain.FittedSlope;
import org.wadeplan.geo.terrain.GridHints;
import org.wadeplan.geo.terrain.Slope;
import org.wadeplan.geo.terrain.SlopeFit;

/** The demo's ground and roads fit its streams, sites and barriers. */
class DemoGroundTest {

    private static final Path ROUND = Path.of("..", "demo-sites", "ilvermoor");

    private static LineSet lines(List<Feature> features, String name) {
        LineSetBuilder lines = new LineSetBuilder();
        features.forEach(feature -> lines.add(feature.text(name).orElseThrow(), (LineString)
                feature.geometry().orElseThrow()));
        return lines.build();
    }

    private static LineSet streams() {
        return lines(DemoGeometry.streams().features(), "code");
    }

    private static Roads roads() {
        List<Feature> features = DemoRoads.layer().features();
        return new Roads(
                lines(features, "road"),
                features.stream().map(road -> road.text("kind").orElseThrow()).toList());
    }

    private static ElevationGrid grid() {
        Checked<ElevationGrid> read = ElevationFile.read(
                ROUND.resolve("elevation.tif"),
                SourcePlace.file("elevation.tif"),
                DemoGeometry.UTM27,
                GridHints.NONE,
                Optional.empty());
        assertThat(read.problems()).isEmpty();
        return read.value().orElseThrow();
    }

    private static Snap onStream(LineSet streams, String site) {
        Coordinate at = Optional.ofNullable(DemoPlaces.sites().get(site)).orElseThrow();
        return new PackedSegmentIndex(streams)
                .nearest(new MetricPoint(at.x, at.y), 1, 100)
                .get(0);
    }

    @Test
    void theGridIsSmallAndInSteps() throws IOException {
        assertThat(Files.size(ROUND.resolve("elevation.tif"))).isLessThan(400_000);
        assertThat(grid().words()).startsWith("365 × 420 cells of about 100 m, heights in steps of 1 m");
    }

    @Test
    void everyStreamRunsDownhillInTheGridFromEndToEnd() {
        ElevationGrid grid = grid();
        LineSet streams = streams();
        for (int line = 0; line < streams.lineCount(); line++) {
            double lowest = Double.POSITIVE_INFINITY;
            for (double atM = 0; atM <= streams.lengthM(line); atM += 250) {
                double height = grid.elevationM(streams.at(line, atM)).orElseThrow();
                // Winding within a cell may lift the water by a step or two.
                assertThat(height).as(streams.id(line) + " at " + atM).isLessThan(lowest + 2.5);
                lowest = Math.min(lowest, height);
            }
            assertThat(lowest).isLessThan(8);
        }
    }

    @Test
    void slopesAreToldAboveTheTideAndNotInIt() {
        SlopeFit fit = new SlopeFit(streams(), grid().ground());
        LineSet streams = streams();
        List<String> unresolved = new ArrayList<>();
        DemoPlaces.sites().keySet().forEach(site -> {
            Snap start = onStream(streams, site);
            FittedSlope slope = fit.along(start.line(), start.chainageM(), start.chainageM() - 150);
            if (slope.slope() instanceof Slope.Fitted fitted) {
                assertThat(fitted.percent()).as(site).isBetween(0.3, 4.0);
            } else {
                unresolved.add(site + ": " + slope.words());
            }
        });

        assertThat(unresolved)
                .containsExactly("PEL-01: not resolved: heights in steps of 1 m over 1050 m tell no less than 0.14 %"
                        + " (cells of 100 m, stretch of 150 m)");
    }

    @Test
    void roadsReachEachSiteAsFarAsTheSiteListSays() throws IOException {
        LineSet streams = streams();
        AccessPlanner planner = new AccessPlanner(roads(), streams, grid().ground(), List.of(), 5000);
        List<String> rows = Files.readAllLines(ROUND.resolve("sites.csv"));
        List<String> columns = List.of(rows.get(0).split(",", -1));
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.replaceAll("\"[^\"]*\"", "").split(",", -1);
            Snap start = onStream(streams, cells[0]);
            Access access = planner.toPlace(start.line(), start.chainageM());

            assertThat(access).as(cells[0]).isInstanceOfSatisfying(Access.OnFoot.class, walk -> {
                assertThat(walk.way().lengthM())
                        .isEqualTo(Double.parseDouble(cells[columns.indexOf("walk_in_m")]), within(30.0));
                assertThat(walk.crossings()).isEmpty();
                assertThat(walk.way().climbM()).isPresent();
            });
        }
    }

    @Test
    void roadsMeetStreamsAtTheBarriersOnly() throws IOException {
        LineSet streams = streams();
        List<String> met = new ArrayList<>();
        for (RoadCrossing crossing : RoadCrossings.of(roads(), streams)) {
            MetricPoint at = streams.at(crossing.line(), crossing.chainageM());
            met.add(barrier(at) + ": " + crossing.road());
        }

        assertThat(met)
                .containsExactlyInAnyOrder(
                        "HSK-CULVERT: Culvert track",
                        "TOL-FORD: Ford track",
                        "OUN-FOOTBRIDGE: Ounder footbridge path",
                        "PEL-BRIDGE: Pell bridge road");
    }

    private static String barrier(MetricPoint at) throws IOException {
        for (String row : Files.readAllLines(ROUND.resolve("barriers.csv"))) {
            String[] cells = row.split(",", -1);
            if (!cells[0].equals("barrier")
                    && at.distanceM(new MetricPoint(Double.parseDouble(cells[3]), Double.parseDouble(cells[4]))) < 60) {
                return cells[0];
            }
        }
        return "no barrier at " + at;
    }
}
