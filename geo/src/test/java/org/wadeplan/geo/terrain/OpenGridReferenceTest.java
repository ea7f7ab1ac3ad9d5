package org.wadeplan.geo.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.Reprojection;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Against open data, which is no part of the project: skipped where it is absent. Heights: SRTM (NASA and USGS, public
 * domain), whole metres, cells of 3 arc-seconds; waterways: OpenStreetMap (ODbL 1.0).
 */
class OpenGridReferenceTest {

    private static final Path DATA = Path.of("..", "..", "shared", "data");
    private static final Path GRID = DATA.resolve("srtm3_north_bayreuth.tif");
    private static final CoordinateSystem UTM32 = CoordinateSystem.named("EPSG:32632", SourcePlace.file("round.json"))
            .value()
            .orElseThrow();

    private static ElevationGrid grid() {
        assumeTrue(
                Files.isRegularFile(GRID),
                "skipped: the open data file srtm3_north_bayreuth.tif is not beside the project, in ../shared/data");
        return ElevationFile.read(GRID, SourcePlace.file("grid.tif"), UTM32, GridHints.NONE, Optional.empty())
                .value()
                .orElseThrow();
    }

    /** Heights of cells by number, as GDAL's own program reads them from the same file. */
    private static List<Double> gdal(List<int[]> cells) throws IOException, InterruptedException {
        Path program = Path.of("/usr/bin/gdallocationinfo");
        assumeTrue(Files.isExecutable(program), "skipped: GDAL's programs (gdal-bin) are not installed");
        Process asked = new ProcessBuilder(program.toString(), "-valonly", GRID.toString()).start();
        StringBuilder lines = new StringBuilder();
        cells.forEach(cell -> lines.append(cell[0]).append(' ').append(cell[1]).append('\n'));
        try (var to = asked.getOutputStream()) {
            to.write(lines.toString().getBytes(StandardCharsets.US_ASCII));
        }
        String answer = new String(asked.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
        assertThat(asked.waitFor()).isZero();
        return answer.lines().map(Double::valueOf).toList();
    }

    @Test
    void atTheCentresOfCellsHeightsAreThoseOfAnotherProgram() throws IOException, InterruptedException {
        ElevationGrid grid = grid();
        Random random = new Random(288);
        List<int[]> cells = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            cells.add(new int[] {random.nextInt(336), random.nextInt(288)});
        }

        List<Double> expected = gdal(cells);

        for (int i = 0; i < cells.size(); i++) {
            // The corner and the cell size as gdalinfo gives them.
            LonLat centre = new LonLat(
                    11.409583333333334 + (cells.get(i)[0] + 0.5) / 1200,
                    50.110416666666666 - (cells.get(i)[1] + 0.5) / 1200);
            assertThat(grid.elevationM(UTM32.toMetric(centre)).orElseThrow()).isEqualTo(expected.get(i), within(0.001));
        }
    }

    @Test
    void theGridKnowsWhatItCanTell() {
        assertThat(grid().words())
                .isEqualTo(
                        "336 × 288 cells of about 76.1 m, heights in steps of 1 m, counted from a datum that the file does"
                                + " not name, in WGS 84 (EPSG:4326)");
    }

    private static LineSet waterways() {
        Path file = DATA.resolve("osm_north_bayreuth.gpkg");
        assumeTrue(Files.isRegularFile(file), "skipped: osm_north_bayreuth.gpkg is not in ../shared/data");
        SourcePlace place = SourcePlace.file("osm_north_bayreuth.gpkg");
        FeatureLayer layer =
                new GeoPackageReader(file, place).read("waterways").value().orElseThrow();
        Reprojection move =
                UTM32.from(layer.shape().crs().orElseThrow(), place).value().orElseThrow();
        LineSetBuilder lines = new LineSetBuilder();
        for (Feature feature : layer.features()) {
            lines.add(feature.text("osm_id").orElse(""), (LineString)
                    move.apply(feature.geometry().orElseThrow()).getGeometryN(0));
        }
        return lines.build();
    }

    /**
     * Real lines over a coarse grid: what is given is never negative and never less than the grid can tell; the rest says why.
     * The shares are what this code gives, kept so that a change shows.
     */
    @Test
    void onRealLinesMostReachesGetASlopeAndTheRestAReason() {
        SlopeFit fit = new SlopeFit(waterways(), grid().ground());
        LineSet lines = waterways();
        int reaches = 0;
        int fitted = 0;
        int rising = 0;
        for (int line = 0; line < lines.lineCount(); line++) {
            for (double atM = 0; atM + 150 <= lines.lengthM(line); atM += 150) {
                reaches++;
                FittedSlope slope = fit.along(line, atM, atM + 150);
                if (slope.slope() instanceof Slope.Fitted told) {
                    fitted++;
                    assertThat(told.percent()).isPositive().isGreaterThanOrEqualTo(slope.plusMinusPercent());
                } else if (slope.words().contains("rise downstream")) {
                    rising++;
                } else {
                    assertThat(slope.words()).startsWith("not resolved: ").hasSizeGreaterThan(40);
                }
            }
        }

        assertThat(reaches).isEqualTo(459);
        assertThat(fitted).isEqualTo(292);
        assertThat(rising).isEqualTo(8);
    }
}
