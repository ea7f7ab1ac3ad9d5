package org.wadeplan.planner.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.draw.Allocation;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Round;

class DrawFilesTest {

    private static final Round ROUND = DemoRound.resolved();
    private static final Instant MADE_AT = Instant.parse("2027-09-05T18:00:00Z");
    private static final RoundDraw DRAW = RoundDrawer.draw(
                    ROUND,
                    new DrawRequest(
                            10,
                            100,
                            StrataBy.CATCHMENT,
                            new Allocation.Equal(),
                            OptionalDouble.empty(),
                            ReachPoint.MIDDLE,
                            4,
                            Map.of()))
            .value()
            .orElseThrow();

    @TempDir
    private Path temp;

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesAllFourAndTheSameDrawGivesTheSameBytes() throws DiskException, IOException {
        Path first = temp.resolve("first");
        Path second = temp.resolve("second");

        assertThat(DrawFiles.write(ROUND, DRAW, first, MADE_AT))
                .containsExactly("draw.json", "draw.gpkg", "draw.geojson", "draw.gpx");
        DrawFiles.write(ROUND, DRAW, second, MADE_AT);

        assertThat(names(first)).containsExactly("draw.geojson", "draw.gpkg", "draw.gpx", "draw.json");
        for (String name : names(first)) {
            assertThat(second.resolve(name)).hasSameBinaryContentAs(first.resolve(name));
        }
        assertThat(names(temp)).containsExactly("first", "second");
    }

    @Test
    void mapProgramsFindEveryPlaceWithItsChanceAndWeight() throws DiskException {
        DrawFiles.write(ROUND, DRAW, temp, MADE_AT);
        GeoPackageReader file = new GeoPackageReader(temp.resolve("draw.gpkg"), SourcePlace.file("draw.gpkg"));
        List<Feature> places = file.read("places").value().orElseThrow().features();
        List<Feature> reaches = file.read("reaches").value().orElseThrow().features();

        assertThat(places).hasSize(20);
        for (int i = 0; i < places.size(); i++) {
            DrawnPlace place = DRAW.places().get(i);
            assertThat(places.get(i).text("place")).contains(place.code());
            assertThat(Double.parseDouble(
                            places.get(i).text("inclusion_probability").orElseThrow()))
                    .isEqualTo(place.inclusionProbability());
            assertThat(places.get(i).geometry().orElseThrow().getCoordinate().x)
                    .isEqualTo(place.at().eastM());
        }
        assertThat(reaches).isNotEmpty().allSatisfy(reach -> assertThat(
                        reach.geometry().orElseThrow().getLength())
                .isEqualTo(150, within(0.001)));
    }

    @Test
    void theRecordHoldsWhatItTakesToRepeatTheDraw() throws DiskException, IOException {
        DrawFiles.write(ROUND, DRAW, temp, MADE_AT);
        JsonNode record = new JsonMapper().readTree(temp.resolve("draw.json").toFile());

        assertThat(record.path("request").path("seed").asLong()).isEqualTo(4);
        assertThat(record.path("request").path("allocation").path("how").asText())
                .isEqualTo("equal");
        assertThat(record.path("framePrint").asText()).hasSize(64);
        assertThat(record.path("inputHash").asText()).isEqualTo(ROUND.hash().whole());
        assertThat(record.path("program").asText()).isNotBlank();
        assertThat(record.path("places")).hasSize(20);
        assertThat(record.path("places").path(0).path("weightM").asDouble())
                .isEqualTo(DRAW.places().get(0).weightM().orElseThrow());
    }

    @Test
    void namesOnTheHandheldAreShortAndDiffer() throws DiskException, IOException {
        DrawFiles.write(ROUND, DRAW, temp, MADE_AT);
        String gpx = Files.readString(temp.resolve("draw.gpx"));
        TreeSet<String> codes =
                new TreeSet<>(DRAW.places().stream().map(DrawnPlace::code).toList());

        assertThat(codes).hasSize(20).allSatisfy(code -> {
            assertThat(code.length()).isLessThanOrEqualTo(10);
            assertThat(gpx).contains("<name>" + code + "</name>");
        });
    }

    @Test
    void whereOneFileCannotBePutTheDiskIsSaid() throws IOException {
        Path taken = Files.writeString(temp.resolve("taken"), "mine");

        assertThatThrownBy(() -> DrawFiles.write(ROUND, DRAW, taken, MADE_AT)).isInstanceOf(DiskException.class);
        assertThat(names(temp)).containsExactly("taken");
        assertThat(taken).hasContent("mine");
    }
}
