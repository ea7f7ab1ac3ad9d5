package org.wadeplan.geo.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.GeoPackageLines;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.lines.SegmentIndex.Snap;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Against open stream data, which is no part of the project: skipped where it is absent.
 *
 * <p>Source of the lines: United States flowline data of New Hope River (CC0). Source of the figures: PostGIS 3.3.2 with
 * GEOS 3.11.1 on the same file: floor of length by 150, eleven stations a reach, reaches from the downstream end whose
 * distance to every node of three or more line ends is above the limit, and the nearest line to three points.
 */
class OpenLinesReferenceTest {

    private static final Path FILE = Path.of("..", "..", "shared", "data", "usgs_new_hope.gpkg");
    private static final SourcePlace PLACE = SourcePlace.file("usgs_new_hope.gpkg");
    private static final String LAYER = "nhdplus_flowline";
    private static final CutRule RULE = new CutRule(150, 10, CutRule.From.LAST_VERTEX);

    @BeforeEach
    void dataIsThere() {
        assumeTrue(
                Files.isRegularFile(FILE),
                "skipped: the open data file " + FILE.getFileName() + " is not beside the project, in ../shared/data");
    }

    private static LineSet newHope() {
        Checked<LineReading> reading = new GeoPackageLines(FILE, PLACE).read(LAYER);
        assertThat(reading.problems()).isEmpty();
        return reading.value().orElseThrow().lines();
    }

    @Test
    void holdsTheLinesAndMetresThatItSaysItHolds() {
        LineSet lines = newHope();

        double lengthM = 0;
        for (int line = 0; line < lines.lineCount(); line++) {
            lengthM += lines.lengthM(line);
        }
        assertThat(List.of(lines.lineCount(), lines.vertexCount())).isEqualTo(List.of(746, 7904));
        assertThat(lengthM).isEqualTo(577_379, within(0.5));
    }

    @Test
    void isCutIntoAsManyReachesAndStationsAsAnotherProgramCuts() {
        ReachCut cut = new ReachCut(newHope(), RULE);

        assertThat(cut.reachCount()).isEqualTo(3496);
        assertThat(cut.stationCount()).isEqualTo(38_456);
    }

    @Test
    void hasAsManyConfluencesAsAnotherProgramFinds() {
        assertThat(LineNodes.whereEndsMeet(newHope(), 3).nodeCount()).isEqualTo(307);
    }

    @ParameterizedTest
    @CsvSource({"50, 3015", "100, 2940"})
    void keepsAsManyReachesClearOfConfluencesAsAnotherProgramKeeps(double clearM, int kept) {
        LineSet lines = newHope();
        ReachClearance clearance = ReachClearance.straight(
                new ReachCut(lines, RULE), new PackedSegmentIndex(lines), LineNodes.whereEndsMeet(lines, 3), clearM);

        assertThat(clearance.keptCount()).isEqualTo(kept);
    }

    @ParameterizedTest
    @CsvSource({
        "1510000, 1565000, 8896054, 449.598, 388.862",
        "1505000, 1570000, 8895564, 208.060, 987.862",
        "1515000, 1560000, 8894326, 330.689, 670.394"
    })
    void findsTheNearestLineThatAnotherProgramFinds(
            double eastM, double northM, long comid, double distanceM, double chainageM) {
        LineSet lines = newHope();
        Snap snap = new PackedSegmentIndex(lines)
                .nearest(new MetricPoint(eastM, northM), 1, Double.POSITIVE_INFINITY)
                .get(0);

        assertThat(comid(lines.id(snap.line()))).isEqualTo(comid);
        assertThat(snap.distanceM()).isEqualTo(distanceM, within(0.001));
        assertThat(snap.chainageM()).isEqualTo(chainageM, within(0.001));
    }

    private static long comid(String id) {
        Feature feature = new GeoPackageReader(FILE, PLACE)
                .read(LAYER).value().orElseThrow().features().stream()
                        .filter(each -> each.id().equals(id))
                        .findFirst()
                        .orElseThrow();
        return Math.round(Double.parseDouble(feature.text("COMID").orElseThrow()));
    }
}
