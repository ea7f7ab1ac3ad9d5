package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class GeoPackageTest {

    static final Instant CHANGED = Instant.parse("2027-09-01T08:00:00Z");
    private static final SourcePlace PLACE = SourcePlace.file("streams.gpkg");
    private static final CoordinateSystem UTM27 =
            CoordinateSystem.named("EPSG:32627", PLACE).value().orElseThrow();

    @TempDir
    Path folder;

    static Geometry wkt(String text) {
        try {
            return new WKTReader().read(text);
        } catch (ParseException wrong) {
            throw new AssertionError(wrong);
        }
    }

    private static FeatureLayer streams() {
        LayerShape shape = new LayerShape(
                "streams",
                Optional.of(StatedSystem.code("EPSG:32627")),
                Kind.LINESTRING,
                List.of(Field.text("Code"), Field.whole("order"), Field.decimal("width_m"), Field.flag("dry")));
        return new FeatureLayer(
                shape,
                List.of(
                        Feature.of(
                                "1",
                                wkt("LINESTRING (512400 5096300, 512410.5 5096310.25)"),
                                Map.of("Code", Attribute.of("BRN"), "order", Attribute.of(2L))),
                        new Feature(
                                "2",
                                Optional.empty(),
                                Map.of("width_m", Attribute.of(4.5), "dry", Attribute.of(true)))));
    }

    private Path written(String name) throws Exception {
        Path file = folder.resolve(name);
        new GeoPackageWriter(UTM27, CHANGED).write(file, List.of(streams()));
        return file;
    }

    @Test
    void givesBackWhatWasWritten() throws Exception {
        Checked<FeatureLayer> back = new GeoPackageReader(written("a.gpkg"), PLACE).read("STREAMS");

        assertThat(back.problems()).isEmpty();
        assertThat(back.value()).contains(streams());
        assertThat(back.value().orElseThrow().features().get(0).text("code")).contains("BRN");
    }

    @Test
    void sameLayersAndTimeGiveTheSameBytes() throws Exception {
        assertThat(written("a.gpkg")).hasSameBinaryContentAs(written("b.gpkg"));
    }

    @Test
    void readsFromAFolderWithSpacesAndUmlautAndLeavesNothingBeside() throws Exception {
        Path place = Files.createDirectory(folder.resolve("Fl\u00fcsse 100% #1 neu?"));
        Path file = place.resolve("my streams \u00fc.gpkg");
        new GeoPackageWriter(UTM27, CHANGED).write(file, List.of(streams()));
        byte[] before = Files.readAllBytes(file);

        assertThat(new GeoPackageReader(file, PLACE).read("streams").hasErrors())
                .isFalse();

        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        try (var beside = Files.list(place)) {
            assertThat(beside).containsExactly(file);
        }
    }

    @Test
    void namesTheLayersThatAreThereWhereOneIsMissing() throws Exception {
        Checked<FeatureLayer> answer = new GeoPackageReader(written("a.gpkg"), PLACE).read("rivers");

        assertThat(answer.problems())
                .extracting(Problem::sentence)
                .containsExactly("streams.gpkg: there is no layer \"rivers\". Allowed: one of streams."
                        + " Do: name the layer that holds the data, or rename it to rivers");
    }

    @Test
    void saysWhatIsWrongWithAFileThatIsNoGeoPackage() throws Exception {
        byte[] whole = Files.readAllBytes(written("whole.gpkg"));
        byte[] random = new byte[4096];
        new Random(7).nextBytes(random);

        assertThat(codeFor(null)).containsExactly("file-missing");
        assertThat(codeFor(new byte[0])).containsExactly("file-empty");
        assertThat(codeFor(random)).containsExactly("not-geopackage");
        assertThat(codeFor(java.util.Arrays.copyOf(whole, 60))).containsExactly("file-truncated");
        assertThat(codeFor(java.util.Arrays.copyOf(whole, whole.length / 2))).containsExactly("file-truncated");
        byte[] damaged = whole.clone();
        for (int i = 200; i < damaged.length; i++) {
            damaged[i] = (byte) (i * 31);
        }
        assertThat(codeFor(damaged)).containsExactly("geopackage-damaged");
    }

    private List<String> codeFor(byte @org.jspecify.annotations.Nullable [] bytes) throws Exception {
        Path file = folder.resolve("bad.gpkg");
        Files.deleteIfExists(file);
        if (bytes != null) {
            Files.write(file, bytes);
        }
        Checked<FeatureLayer> answer = new GeoPackageReader(file, PLACE).read("streams");
        assertThat(answer.value()).isEmpty();
        return answer.problems().stream().map(Problem::code).toList();
    }

    @Test
    void hasTheHeaderAndSystemTablesOfTheStandard() throws Exception {
        // Source: OGC GeoPackage 1.3, clauses 1.1.1.1.1 (application id, version), 1.1.2.1.2 (systems), 1.1.3, 2.1.5.
        Path file = written("a.gpkg");
        ByteBuffer header = ByteBuffer.wrap(Files.readAllBytes(file));

        assertThat(header.getInt(68)).isEqualTo(0x47504B47);
        assertThat(header.getInt(60)).isEqualTo(10300);
        assertThat(PlainSql.rows(file, "SELECT srs_id, organization FROM gpkg_spatial_ref_sys ORDER BY srs_id"))
                .containsExactly("-1|NONE", "0|NONE", "4326|EPSG", "32627|EPSG");
        assertThat(
                        PlainSql.rows(
                                file,
                                "SELECT table_name, data_type, last_change, min_x, min_y, max_x, max_y, srs_id FROM gpkg_contents"))
                .containsExactly(
                        "streams|features|2027-09-01T08:00:00.000Z|512400.0|5096300.0|512410.5|5096310.25|32627");
        assertThat(PlainSql.rows(file, "SELECT * FROM gpkg_geometry_columns"))
                .containsExactly("streams|geom|LINESTRING|32627|0|0");
        assertThat(PlainSql.rows(file, "PRAGMA integrity_check")).containsExactly("ok");
        assertThat(PlainSql.rows(file, "PRAGMA foreign_key_check")).isEmpty();
        assertThat(PlainSql.rows(file, "SELECT definition FROM gpkg_spatial_ref_sys WHERE srs_id = 32627")
                        .get(0))
                .startsWith("PROJCS[");
    }

    @Test
    void shapesBeginWithTheBytesOfTheStandard() {
        // Source: header bytes as another program (GDAL) wrote them into an open data file, system 4326:
        // 47500003 e6100000, then the envelope minx, maxx, miny, maxy, then the WKB at byte 40.
        byte[] blob = GeometryBlob.encode(wkt("LINESTRING (1 20, 3 40)"), 4326);

        assertThat(HexFormat.of().formatHex(blob, 0, 8)).isEqualTo("47500003e6100000");
        ByteBuffer box = ByteBuffer.wrap(blob, 8, 32).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(List.of(box.getDouble(), box.getDouble(), box.getDouble(), box.getDouble()))
                .containsExactly(1.0, 3.0, 20.0, 40.0);
        assertThat(HexFormat.of().formatHex(blob, 40, 49)).isEqualTo("010200000002000000");
    }

    @Test
    void reportsAShapeThatBreaksOffAndReadsTheRest() throws Exception {
        Path file = written("a.gpkg");
        PlainSql.change(file, "UPDATE streams SET geom = substr(geom, 1, 50) WHERE fid = 1");
        List<Feature> seen = new ArrayList<>();

        Checked<LayerShape> answer = new GeoPackageReader(file, PLACE).each("streams", seen::add);

        assertThat(answer.problems())
                .extracting(Problem::sentence)
                .containsExactly("streams.gpkg, streams feature 1: its shape breaks off or is damaged. Allowed: a line,"
                        + " point or area as the GeoPackage standard stores it. Do: draw or export this feature again");
        assertThat(seen).extracting(Feature::id).containsExactly("1", "2");
    }

    @Test
    void readsAFileThatAMapProgramLeftInItsOwnJournalMode() throws Exception {
        // Map programs leave files in write-ahead mode; opening those in the ordinary way makes files beside them.
        Path file = written("a.gpkg");
        PlainSql.rows(file, "PRAGMA journal_mode = WAL");

        assertThat(new GeoPackageReader(file, PLACE).read("streams").problems()).isEmpty();
        try (var beside = Files.list(folder)) {
            assertThat(beside).containsExactly(file);
        }
    }

    @Test
    void warnsWhereAnotherProgramHasChangesThatAreNotInTheFileYet() throws Exception {
        Path file = written("a.gpkg");
        Files.write(folder.resolve("a.gpkg-wal"), new byte[] {1});

        assertThat(new GeoPackageReader(file, PLACE).read("streams").problems())
                .extracting(Problem::code)
                .containsExactly("geopackage-open-elsewhere");
    }

    @Test
    void readsAViewThatIsRegisteredAsALayer() throws Exception {
        Path file = written("a.gpkg");
        PlainSql.change(file, "CREATE VIEW brown AS SELECT geom, Code FROM streams");
        PlainSql.change(
                file,
                "INSERT INTO gpkg_contents (table_name, data_type, last_change, srs_id)"
                        + " VALUES ('brown', 'features', '2027-01-01T00:00:00.000Z', 32627)");
        PlainSql.change(file, "INSERT INTO gpkg_geometry_columns VALUES ('brown', 'geom', 'LINESTRING', 32627, 0, 0)");

        assertThat(new GeoPackageReader(file, PLACE)
                        .read("brown")
                        .value()
                        .orElseThrow()
                        .features())
                .extracting(feature -> feature.id() + " " + feature.text("code").orElse("-"))
                .containsExactly("1 BRN", "2 -");
    }

    @Test
    void listsItsLayers() throws Exception {
        assertThat(new GeoPackageReader(written("a.gpkg"), PLACE).layers().value())
                .contains(List.of("streams"));
    }
}
