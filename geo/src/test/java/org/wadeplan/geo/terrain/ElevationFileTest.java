package org.wadeplan.geo.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * One grid of 20 columns and 17 rows of 30 m, its south-west corner at E 500000, N 5000000, height 100 + 2 × column + row
 * (from the north), one cell without a height; stored in many ways by GDAL 3.6, which is another program.
 */
class ElevationFileTest {

    private static final CoordinateSystem UTM27 = CoordinateSystem.named("EPSG:32627", SourcePlace.file("round.json"))
            .value()
            .orElseThrow();
    private static final GridHints IN_UTM27 =
            new GridHints(Optional.of("EPSG:32627"), OptionalDouble.empty(), Optional.empty());

    @TempDir
    Path folder;

    private static Path stored(String name) {
        try {
            return Path.of(Objects.requireNonNull(ElevationFileTest.class.getResource("/terrain/" + name))
                    .toURI());
        } catch (URISyntaxException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static Checked<ElevationGrid> read(Path file, GridHints hints) {
        return ElevationFile.read(
                file, SourcePlace.file(String.valueOf(file.getFileName())), UTM27, hints, Optional.empty());
    }

    private static OptionalDouble at(ElevationGrid grid, double eastM, double northM) {
        return grid.elevationM(new MetricPoint(eastM, northM));
    }

    private static List<String> sentences(Checked<ElevationGrid> answer) {
        return answer.problems().stream().map(Problem::sentence).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "int16_plain_strip.tif",
                "int16_lzw_tiled.tif",
                "int16_deflate_predictor2_strip.tif",
                "int16_lzw_predictor2_tiled_big_endian.tif",
                "int32_packbits_strip.tif",
                "float32_deflate_predictor3_tiled.tif",
                "float32_zstd_strip.tif",
                "float64_lzw_tiled.tif",
                "int16_bigtiff.tif",
                "int16_pixel_is_point.tif",
                "plane.asc"
            })
    void everyWayOfStoringGivesTheSameHeights(String name) {
        Checked<ElevationGrid> answer = read(stored(name), name.endsWith(".asc") ? IN_UTM27 : GridHints.NONE);

        assertThat(answer.problems()).isEmpty();
        ElevationGrid grid = answer.value().orElseThrow();
        // The centre of the first cell, then of the last, then half way between four centres, worked by hand.
        assertThat(at(grid, 500_015, 5_000_495).orElseThrow()).isEqualTo(100, within(1e-6));
        assertThat(at(grid, 500_585, 5_000_015).orElseThrow()).isEqualTo(154, within(1e-6));
        assertThat(at(grid, 500_330, 5_000_210).orElseThrow()).isEqualTo(130.5, within(1e-6));
        assertThat(at(grid, 500_322.5, 5_000_225).orElseThrow()).isEqualTo(129.5, within(1e-6));
        assertThat(grid.cellM()).isEqualTo(30, within(1e-9));
        assertThat(grid.verticalStepM()).isEqualTo(1);
    }

    @Test
    void outsideAndBesideACellWithoutAHeightNothingIsKnown() {
        ElevationGrid grid =
                read(stored("int16_plain_strip.tif"), GridHints.NONE).value().orElseThrow();

        assertThat(at(grid, 500_135, 5_000_405)).as("in the cell itself").isEmpty();
        assertThat(at(grid, 500_120, 5_000_405)).as("half way to it").isEmpty();
        assertThat(at(grid, 500_105, 5_000_405).orElseThrow())
                .as("on its neighbour's centre")
                .isEqualTo(109, within(1e-6));
        assertThat(at(grid, 500_000.5, 5_000_495).orElseThrow())
                .as("in the outer half of an edge cell")
                .isEqualTo(100, within(1e-6));
        assertThat(at(grid, 499_999.5, 5_000_495)).as("half a metre outside").isEmpty();
        assertThat(at(grid, 500_300, 5_000_510.5)).isEmpty();
        assertThat(at(grid, 900_000, 7_000_000)).isEmpty();
    }

    @Test
    void aFormThatTheReaderGetsWrongIsRefused() {
        assertThat(read(stored("float32_predictor3_big_endian.tif"), GridHints.NONE)
                        .problems())
                .extracting(Problem::code)
                .containsExactly("grid-damaged");
    }

    @Test
    void onlyTheCellsAroundTheAreaAreHeld() {
        ElevationGrid part = ElevationFile.read(
                        stored("float32_deflate_predictor3_tiled.tif"),
                        SourcePlace.file("part.tif"),
                        UTM27,
                        GridHints.NONE,
                        Optional.of(new Envelope(500_400, 500_500, 5_000_100, 5_000_150)))
                .value()
                .orElseThrow();

        assertThat(part.words()).startsWith("10 × 8 cells of about 30 m, heights in steps of 1 m");
        assertThat(at(part, 500_435, 5_000_135).orElseThrow()).isEqualTo(100 + 28 + 12.0, within(1e-6));
        assertThat(at(part, 500_015, 5_000_495)).as("not held").isEmpty();
    }

    @Test
    void scaledAndFootHeightsBecomeMetres() {
        ElevationGrid scaled =
                read(stored("int16_scaled.tif"), GridHints.NONE).value().orElseThrow();
        Checked<ElevationGrid> feet = read(stored("float32_feet.tif"), GridHints.NONE);

        assertThat(at(scaled, 500_015, 5_000_495).orElseThrow()).isEqualTo(100 * 0.1 + 5, within(1e-5));
        assertThat(scaled.verticalStepM()).isEqualTo(0.1);
        assertThat(at(feet.value().orElseThrow(), 500_015, 5_000_495).orElseThrow())
                .isEqualTo(30.48, within(1e-5));
        assertThat(sentences(feet))
                .containsExactly(
                        "float32_feet.tif: the file says that its heights are in feet; each was taken as 0.3048000 m."
                                + " Allowed: heights in metres or with their unit. Do: nothing, if that is right");
    }

    @Test
    void whatAPersonSaysGoesBeforeWhatWasMeasured() {
        GridHints hints = new GridHints(
                Optional.of("EPSG:32628"),
                OptionalDouble.of(0.25),
                Optional.of("mean sea level at the invented gauge"));

        ElevationGrid grid = read(stored("no_crs.tif"), hints).value().orElseThrow();

        assertThat(grid.words())
                .isEqualTo("20 × 17 cells of about 30 m, heights in steps of 0.25 m, counted from mean sea level at the"
                        + " invented gauge, in EPSG:32628");
        assertThat(at(grid, 500_015, 5_000_495))
                .as("zone 28 lies six degrees further east")
                .isEmpty();
    }

    @Test
    void aGridWithoutItsSystemIsRefusedWithTheWayOut() {
        assertThat(sentences(read(stored("no_crs.tif"), GridHints.NONE)))
                .containsExactly(
                        "no_crs.tif: the grid does not state a coordinate system that can be understood. Allowed: a"
                                + " grid with its coordinate system. Do: ask whoever made it, and write its code under elevation"
                                + " in round.json: \"elevation\": {\"crs\": \"EPSG:2193\"}");
        assertThat(read(stored("plane.asc"), GridHints.NONE).problems())
                .extracting(Problem::code)
                .containsExactly("crs-missing");
    }

    @Test
    void randomBytesAreNoGrid() throws IOException {
        byte[] noise = new byte[5000];
        new Random(7).nextBytes(noise);
        Path file = Files.write(folder.resolve("noise.tif"), noise);

        assertThat(sentences(read(file, GridHints.NONE)))
                .containsExactly(
                        "noise.tif: the file is not a grid that can be read: its first bytes are something else."
                                + " Allowed: a grid of elevations: GeoTIFF (.tif) or ESRI ASCII grid (.asc)."
                                + " Do: export the elevations again as GeoTIFF");
    }

    @Test
    void randomBytesBehindTheMarkOfATiffAreDamage() throws IOException {
        for (int seed = 0; seed < 50; seed++) {
            byte[] noise = new byte[3000];
            new Random(seed).nextBytes(noise);
            System.arraycopy(new byte[] {'I', 'I', 42, 0, 8, 0, 0, 0}, 0, noise, 0, 8);
            Path file = Files.write(folder.resolve("noise.tif"), noise);

            assertThat(read(file, GridHints.NONE).problems())
                    .extracting(Problem::code)
                    .containsAnyOf("grid-damaged", "file-truncated")
                    .hasSize(1);
        }
    }

    @Test
    void aFileThatBreaksOffIsSaidToWithItsFigures() throws IOException {
        byte[] whole = Files.readAllBytes(stored("int16_plain_strip.tif"));
        Path file = Files.write(folder.resolve("cut.tif"), Arrays.copyOf(whole, 700));

        assertThat(sentences(read(file, GridHints.NONE)))
                .containsExactly("cut.tif: the file breaks off: it has 700 bytes and its cells reach to byte "
                        + whole.length + ". Allowed: a whole grid. Do: copy it again from where it came from");
    }

    @Test
    void everyCutOfAFileHasAnAnswer() throws IOException {
        byte[] whole = Files.readAllBytes(stored("int16_deflate_predictor2_strip.tif"));
        for (int bytes = 1; bytes < whole.length; bytes += 3) {
            Path file = Files.write(folder.resolve("cut.tif"), Arrays.copyOf(whole, bytes));

            assertThat(read(file, GridHints.NONE).hasErrors())
                    .as(bytes + " bytes")
                    .isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"ncols", "nrows", "xllcorner", "yllcorner", "cellsize"})
    void aHeaderWithoutALineNamesIt(String key) throws IOException {
        String text = Files.readString(stored("plane.asc")).replaceFirst("(?m)^" + key + ".*\\R", "");
        Path file = Files.writeString(folder.resolve("header.asc"), text);
        String either =
                key.startsWith("xll") || key.startsWith("yll") ? key + " or " + key.substring(0, 3) + "center" : key;

        assertThat(sentences(read(file, IN_UTM27)))
                .containsExactly("header.asc: the header has no line " + either
                        + ". Allowed: lines ncols, nrows, xllcorner, yllcorner, cellsize and NODATA_value before the heights."
                        + " Do: export the grid again, or put the line back");
    }

    @Test
    void withoutItsNoDataLineTheUsualValueIsTakenAndSaid() throws IOException {
        String text = Files.readString(stored("plane.asc")).replaceFirst("(?m)^NODATA.*\\R", "");
        Checked<ElevationGrid> answer = read(Files.writeString(folder.resolve("plain.asc"), text), IN_UTM27);

        assertThat(sentences(answer))
                .containsExactly(
                        "plain.asc: the file does not say which value stands for not known; -9999 was taken so."
                                + " Allowed: a stated nodata value. Do: nothing, if that is right; else save the grid again with its"
                                + " nodata value");
        assertThat(at(answer.value().orElseThrow(), 500_135, 5_000_405)).isEmpty();
    }

    @Test
    void aTextGridWithTooFewHeightsOrADecimalCommaIsRefused() throws IOException {
        String text = Files.readString(stored("plane.asc"));
        Path cut = Files.writeString(
                folder.resolve("cut.asc"), text.substring(0, text.length() - 50).strip());
        Path comma = Files.writeString(folder.resolve("comma.asc"), text.replaceFirst(" 102 ", " 102,5 "));

        assertThat(sentences(read(cut, IN_UTM27)))
                .containsExactly(
                        "cut.asc: the file breaks off: it has 328 heights and its header promises 20 × 17 = 340."
                                + " Allowed: a whole grid. Do: copy it again from where it came from");
        assertThat(sentences(read(comma, IN_UTM27)))
                .containsExactly("comma.asc, line 7: a height is \"102,5\". Allowed: a number with a decimal point."
                        + " Do: use a point: 102.5");
    }

    @Test
    void centresInTheHeaderMoveTheGridByHalfACell() throws IOException {
        String text = Files.readString(stored("plane.asc"))
                .replace("xllcorner 500000", "xllcenter 500015")
                .replace("yllcorner 5000000", "yllcenter 5000015");

        ElevationGrid grid = read(Files.writeString(folder.resolve("centre.asc"), text), IN_UTM27)
                .value()
                .orElseThrow();

        assertThat(at(grid, 500_015, 5_000_495).orElseThrow()).isEqualTo(100, within(1e-6));
    }

    @Test
    void metresDeclaredAsDegreesAndTheOtherWayRoundAreTold() throws IOException {
        GridHints degrees = new GridHints(Optional.of("EPSG:4326"), OptionalDouble.empty(), Optional.empty());
        String inDegrees = Files.readString(stored("plane.asc"))
                .replace("xllcorner 500000", "xllcorner -21.0")
                .replace("yllcorner 5000000", "yllcorner 45.1")
                .replace("cellsize 30", "cellsize 0.00028");

        assertThat(sentences(read(stored("no_crs.tif"), degrees)))
                .containsExactly("no_crs.tif: the grid's middle, 500300.0, 5000255, cannot lie in EPSG:4326. Allowed:"
                        + " coordinates of that system. Do: these are metres: name the metric system they are in under"
                        + " elevation in round.json, probably \"crs\": \"EPSG:32627\"");
        assertThat(sentences(read(Files.writeString(folder.resolve("deg.asc"), inDegrees), IN_UTM27)))
                .containsExactly("deg.asc: the grid's middle, -20.99720, 45.10238, cannot lie in EPSG:32627. Allowed:"
                        + " coordinates of that system. Do: these are probably degrees: name their system under elevation"
                        + " in round.json, probably \"crs\": \"EPSG:4326\"");
    }

    @Test
    void heightsThatNoGroundHasAreSuspected() throws IOException {
        String text = Files.readString(stored("plane.asc")).replace(" 130 ", " 13000 ");

        assertThat(sentences(read(Files.writeString(folder.resolve("cm.asc"), text), IN_UTM27)))
                .containsExactly(
                        "cm.asc: heights run from 100 to 13000: that is no ground in metres. Allowed: heights in"
                                + " metres: the Dead Sea's shore lies at -430, the highest summit at 8,849. Do: check the unit (feet,"
                                + " decimetres, centimetres) and the value that stands for not known");
    }

    @Test
    void aGridWithoutAnyHeightIsRefused() throws IOException {
        String text = Files.readString(stored("plane.asc")).replaceAll("(?<=[ \\n])1[0-9][0-9](?=[ \\n])", "-9999");

        assertThat(read(Files.writeString(folder.resolve("empty.asc"), text), IN_UTM27)
                        .problems())
                .extracting(Problem::found)
                .containsExactly("no cell of the grid has a value");
    }

    @Test
    void textThatIsNoGridIsSaidToBeNone() throws IOException {
        Path file = Files.write(folder.resolve("letter.asc"), "12 monkeys\n".getBytes(StandardCharsets.UTF_8));
        Path words = Files.write(folder.resolve("words.asc"), "Dear crew,\n".getBytes(StandardCharsets.UTF_8));

        assertThat(read(file, IN_UTM27).problems()).extracting(Problem::code).containsExactly("not-a-grid");
        assertThat(read(words, IN_UTM27).problems())
                .extracting(Problem::code)
                .containsOnly("grid-header-missing")
                .hasSize(5);
    }
}
