package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.Field;
import org.wadeplan.geo.io.GeoPackageWriter;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Terrain;

/** Roads and heights of a round: both may be missing, and what is there is judged. */
class RoadsAndHeightsTest {

    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final String FILES = ", \"roads\": \"roads.gpkg\", \"elevation\": \"elevation.tif\"";

    @TempDir
    Path temp;

    private BrokenRound round() {
        return BrokenRound.in(temp);
    }

    private static Terrain terrain(BrokenRound round) {
        return round.read().value().map(Round::terrain).orElseThrow();
    }

    @Test
    void theDemoRoundHasBothAndItsFingerprintCoversThem() {
        Round read = round().read().value().orElseThrow();

        assertThat(read.terrain().roads().orElseThrow().lines().lineCount()).isEqualTo(19);
        assertThat(read.terrain().elevation().orElseThrow().words())
                .isEqualTo(
                        "365 × 420 cells of about 100 m, heights in steps of 1 m, counted from mean sea level at the Pell"
                                + " staithe, in WGS 84 / UTM zone 27N (EPSG:32627)");
        assertThat(read.hash().byFile()).containsKeys("roads.gpkg", "elevation.tif");
    }

    @Test
    void aRoundMayDoWithoutEither() {
        BrokenRound round =
                round().without("roads.gpkg").without("elevation.tif").with("round.json", FILES, "");

        assertThat(round.sentences()).isEmpty();
        assertThat(terrain(round).roads()).isEmpty();
        assertThat(terrain(round).elevation()).isEmpty();
        assertThat(terrain(round).ground().isKnown()).isFalse();
    }

    @Test
    void whatRoundJsonNamesMustBeThere() {
        assertThat(round().without("roads.gpkg").without("elevation.tif").sentences())
                .containsExactly(
                        "ERROR file-missing elevation.tif: the file is not there. Allowed: the file in the round folder."
                                + " Do: add it, or name the one that holds it under files in round.json",
                        "ERROR file-missing roads.gpkg: the file is not there. Allowed: the file in the round folder."
                                + " Do: add it, or name the one that holds it under files in round.json");
    }

    private BrokenRound withRoads(Feature... features) throws DiskException {
        CoordinateSystem crs = CoordinateSystem.named("EPSG:32627", SourcePlace.file("test"))
                .value()
                .orElseThrow();
        BrokenRound round = round().without("roads.gpkg");
        LayerShape shape = new LayerShape(
                "roads",
                Optional.of(StatedSystem.code("EPSG:32627")),
                LayerShape.Kind.GEOMETRY,
                List.of(Field.text("road"), Field.text("kind")));
        new GeoPackageWriter(crs, Instant.EPOCH)
                .write(round.file("roads.gpkg"), List.of(new FeatureLayer(shape, List.of(features))));
        return round;
    }

    private static Feature feature(int id, Geometry shape, Map<String, Attribute> attributes) {
        return Feature.of(Integer.toString(id), shape, attributes);
    }

    private static Geometry line(double eastM) {
        return SHAPES.createLineString(
                new Coordinate[] {new Coordinate(eastM, 5_109_000), new Coordinate(eastM, 5_110_000)});
    }

    private static Geometry point() {
        return SHAPES.createPoint(new Coordinate(503_000, 5_109_000));
    }

    @Test
    void whatIsNoLineIsLeftOutAndUnnamedRoadsKeepTheirNumber() throws DiskException {
        BrokenRound round = withRoads(
                feature(1, line(503_000), Map.of("kind", Attribute.of("track"))),
                feature(2, point(), Map.of("road", Attribute.of("a gate"))));

        assertThat(round.sentences())
                .containsExactly(
                        "WARNING road-not-a-line roads.gpkg: 1 of its 2 features is no line with a length and left"
                                + " out. Allowed: roads and tracks as lines. Do: nothing, if no road is missing");
        assertThat(terrain(round).roads().orElseThrow().lines().id(0)).isEqualTo("road 1");
        assertThat(terrain(round).roads().orElseThrow().kind(0)).isEqualTo("track");
    }

    @Test
    void aRoadsFileWithoutLinesIsRefused() throws DiskException {
        assertThat(withRoads(feature(1, point(), Map.of())).sentences())
                .containsExactly(
                        "ERROR roads-without-lines roads.gpkg: none of the layer's 1 features is a line with a length."
                                + " Allowed: roads and tracks as lines. Do: name the file and layer that hold them, or take it out of"
                                + " files in round.json");
    }

    @Test
    void aGridThatCoversPartOfTheStreamsIsAWarningWithItsShare() throws IOException {
        BrokenRound round = withText(500, 200);

        assertThat(round.sentences())
                .containsExactly(
                        "WARNING grid-covers-part elevation.asc: the grid has heights along 35 % of the stream lines."
                                + " Allowed: heights wherever the round's streams run. Do: slopes and climbs elsewhere stay unknown;"
                                + " add the neighbouring tiles if they matter");
    }

    @Test
    void aGridElsewhereCoversHardlyAnything() throws IOException {
        assertThat(withText(10, 10).sentences())
                .containsExactly(
                        "WARNING grid-covers-part elevation.asc: the grid has heights along hardly any of the stream"
                                + " lines, less than 1 %. Allowed: heights wherever the round's streams run. Do: slopes and climbs"
                                + " elsewhere stay unknown; add the neighbouring tiles if they matter");
    }

    /** A flat text grid of 100 m cells from the south-west corner of the demo's grid. */
    private BrokenRound withText(int columns, int rows) throws IOException {
        BrokenRound round = round().without("elevation.tif")
                .with("round.json", "\"elevation.tif\"", "\"elevation.asc\"")
                .with("round.json", "\"elevation\": {", "\"elevation\": {\"crs\": \"EPSG:32627\", ");
        String row = "7 ".repeat(columns).strip() + "\n";
        Files.writeString(
                round.file("elevation.asc"),
                "ncols " + columns + "\nnrows " + rows + "\nxllcorner 496500\nyllcorner 5077500\ncellsize 100\n"
                        + "NODATA_value -1\n" + row.repeat(rows));
        return round;
    }

    @Test
    void brokenGridsAreOneProblemEach() throws IOException {
        BrokenRound round = round();
        byte[] whole = Files.readAllBytes(round.file("elevation.tif"));
        Files.write(round.file("elevation.tif"), Arrays.copyOf(whole, 200_000));
        assertThat(round.sentences())
                .containsExactly(
                        "ERROR file-truncated elevation.tif: the file breaks off: it has 200000 bytes and its cells"
                                + " reach to byte " + whole.length
                                + ". Allowed: a whole grid. Do: copy it again from where it came"
                                + " from");

        byte[] noise = new byte[20_000];
        new Random(3).nextBytes(noise);
        Files.write(round.file("elevation.tif"), noise);
        assertThat(round.sentences())
                .containsExactly(
                        "ERROR not-a-grid elevation.tif: the file is not a grid that can be read: its first bytes are"
                                + " something else. Allowed: a grid of elevations: GeoTIFF (.tif) or ESRI ASCII grid (.asc)."
                                + " Do: export the elevations again as GeoTIFF");
    }

    @Test
    void whatRoundJsonSaysAboutTheGridIsJudged() {
        BrokenRound round = round().with(
                        "round.json",
                        "\"elevation\": {",
                        "\"elevation\": {\"crs\": \"EPSG:4326\", \"verticalStepM\": 0, \"dtaum\": \"x\", ");

        assertThat(round.sentences())
                .anyMatch(sentence ->
                        sentence.startsWith("ERROR") && sentence.contains("round.json, elevation.verticalStepM"))
                .anyMatch(sentence -> sentence.contains("round.json, elevation.dtaum"));
    }
}
