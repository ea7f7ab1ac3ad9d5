package org.wadeplan.geo.io;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.geo.io.GeoPackageTest.wkt;
import static org.wadeplan.geo.io.ShapefileBytes.nothing;
import static org.wadeplan.geo.io.ShapefileBytes.parts;
import static org.wadeplan.geo.io.ShapefileBytes.point;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class ShapefileTest {

    private static final SourcePlace PLACE = SourcePlace.file("streams.shp");
    private static final double[] LINE = {512400, 5096300, 512410, 5096310, 512420, 5096300};

    @TempDir
    Path folder;

    private Checked<FeatureLayer> read() {
        return new ShapefileReader(folder.resolve("streams.shp"), PLACE).read();
    }

    private static ShapefileBytes lines() {
        return new ShapefileBytes(3)
                .column("CODE C 10 0")
                .column("ORDER N 4 0")
                .column("WIDTH_M N 8 2")
                .column("AREA F 12 3")
                .column("DRY L 1 0")
                .column("SEEN D 8 0");
    }

    private static ShapefileBytes oneLine() {
        return lines().record(parts(3, LINE)).row(" ", "BRN", "2", "4.50", "1.5e3", "T", "20270906");
    }

    private List<String> sentences() {
        return read().problems().stream().map(Problem::sentence).toList();
    }

    private List<Geometry> shapes() {
        return read().value().orElseThrow().features().stream()
                .map(feature -> feature.geometry().orElseThrow())
                .toList();
    }

    @Test
    void readsLinesWithTheirTableAndSystem() throws Exception {
        lines().record(parts(3, LINE))
                .row(" ", "BRN", "2", "4.50", "1.5e3", "T", "20270906")
                .record(nothing())
                .row(" ", "", "", "******", "", "?", "00000000")
                .record(parts(3, new double[] {0, 0, 1, 1}, new double[] {5, 5, 6, 6}))
                .row(" ", "TOL", "-9", "-9999", "0", "n", "")
                .write(folder);

        Checked<FeatureLayer> answer = read();

        assertThat(answer.problems()).isEmpty();
        FeatureLayer layer = answer.value().orElseThrow();
        assertThat(layer.shape().name()).isEqualTo("streams");
        assertThat(layer.shape().crs().orElseThrow().name()).isEqualTo("WGS_1984_UTM_Zone_27N");
        assertThat(layer.shape().fields())
                .containsExactly(
                        Field.text("CODE"),
                        Field.whole("ORDER"),
                        Field.decimal("WIDTH_M"),
                        Field.decimal("AREA"),
                        Field.flag("DRY"),
                        Field.text("SEEN"));
        assertThat(layer.features())
                .containsExactly(
                        Feature.of(
                                "1",
                                wkt("LINESTRING (512400 5096300, 512410 5096310, 512420 5096300)"),
                                Map.of(
                                        "CODE", Attribute.of("BRN"),
                                        "ORDER", Attribute.of(2L),
                                        "WIDTH_M", Attribute.of(4.5),
                                        "AREA", Attribute.of(1500.0),
                                        "DRY", Attribute.of(true),
                                        "SEEN", Attribute.of("2027-09-06"))),
                        new Feature("2", Optional.empty(), Map.of()),
                        Feature.of(
                                "3",
                                wkt("MULTILINESTRING ((0 0, 1 1), (5 5, 6 6))"),
                                Map.of(
                                        "CODE", Attribute.of("TOL"),
                                        "ORDER", Attribute.of(-9L),
                                        "WIDTH_M", Attribute.of(-9999.0),
                                        "AREA", Attribute.of(0.0),
                                        "DRY", Attribute.of(false))));
    }

    @Test
    void readsPointsAreasAndTheirFormsWithHeightsInThePlane() throws Exception {
        new ShapefileBytes(1).record(point(3, 4)).row(" ").write(folder);
        assertThat(shapes()).containsExactly(wkt("POINT (3 4)"));

        double[] shell = {0, 0, 0, 10, 10, 10, 10, 0, 0, 0};
        double[] hole = {2, 2, 4, 2, 4, 4, 2, 4, 2, 2};
        double[] island = {20, 0, 20, 5, 25, 5, 25, 0, 20, 0};
        new ShapefileBytes(5).record(parts(5, shell, hole, island)).row(" ").write(folder);
        assertThat(shapes())
                .containsExactly(wkt("MULTIPOLYGON (((0 0, 0 10, 10 10, 10 0, 0 0), (2 2, 4 2, 4 4, 2 4, 2 2)),"
                        + " ((20 0, 20 5, 25 5, 25 0, 20 0)))"));

        byte[] plane = parts(13, LINE);
        byte[] withHeights = Arrays.copyOf(plane, plane.length + 2 * (16 + 3 * 8));
        new ShapefileBytes(13).record(withHeights).row(" ").write(folder);
        assertThat(shapes()).containsExactly(wkt("LINESTRING (512400 5096300, 512410 5096310, 512420 5096300)"));
        assertThat(sentences()).containsExactly("streams.shp: heights and measures in it are not read. Do: nothing");
    }

    @Test
    void leavesOutRecordsThatAreMarkedAsDeleted() throws Exception {
        oneLine().record(parts(3, LINE)).row("*", "OLD").write(folder);

        assertThat(read().value().orElseThrow().features())
                .extracting(Feature::id)
                .containsExactly("1");
        assertThat(sentences()).containsExactly("streams.dbf: 1 record is marked as deleted and left out. Do: nothing");
    }

    @ParameterizedTest
    @CsvSource({
        "UTF-8, UTF-8, 0",
        "UTF-8, 65001, 0",
        "UTF-8, '', 0",
        "ISO-8859-1, ISO 8859-1, 0",
        "ISO-8859-1, 88591, 0",
        "windows-1252, 1252, 87",
        "windows-1252, ANSI 1252, 0",
        "windows-1252, '', 3",
        "IBM850, '', 2",
        "IBM850, OEM 850, 0",
        "windows-1252, '', 0"
    })
    void readsTextsAsTheFilesSayThatTheyAreStored(String stored, String cpg, int language) throws Exception {
        new ShapefileBytes(1)
                .stored(Charset.forName(stored), language)
                .column("NAME C 20 0")
                .record(point(1, 2))
                .row(" ", "Waldb\u00e4chle \u00e9t\u00e9")
                .write(folder);
        if (!cpg.isEmpty()) {
            Files.writeString(folder.resolve("streams.CPG"), cpg + "\r\n");
        }

        Checked<FeatureLayer> answer = read();

        assertThat(answer.value().orElseThrow().features().get(0).text("name"))
                .contains("Waldb\u00e4chle \u00e9t\u00e9");
        boolean told = !cpg.isEmpty() || language != 0;
        assertThat(answer.problems())
                .extracting(Problem::code)
                .isEqualTo(told ? List.of() : List.of("dbf-encoding-assumed"));
    }

    @Test
    void saysThatTextsDoNotFitTheirStatedForm() throws Exception {
        new ShapefileBytes(1)
                .stored(ISO_8859_1, 0)
                .column("NAME C 20 0")
                .record(point(1, 2))
                .row(" ", "B\u00e4chle")
                .write(folder);
        Files.writeString(folder.resolve("streams.cpg"), "UTF-8");
        assertThat(sentences())
                .containsExactly(
                        "streams.dbf: 1 texts hold bytes that stand for no letter in UTF-8. Allowed: texts stored"
                                + " as the .cpg or the file's header says. Do: put a .cpg with the right name, such as UTF-8,"
                                + " beside the file");

        Files.writeString(folder.resolve("streams.cpg"), "KLINGON");
        assertThat(sentences().get(0))
                .isEqualTo(
                        "streams.cpg: \"KLINGON\" is no way of storing texts that is known here. Allowed: a name such"
                                + " as UTF-8 or 1252. Do: correct it, and look at a name with a letter beyond a to z");
    }

    @Test
    void findsTheOtherFilesWhateverTheirCapitals() throws Exception {
        oneLine().write(folder);
        Files.move(folder.resolve("streams.dbf"), folder.resolve("Streams.DBF"));
        Files.move(folder.resolve("streams.prj"), folder.resolve("STREAMS.Prj"));
        Files.move(folder.resolve("streams.shp"), folder.resolve("streams.SHP"));

        Checked<FeatureLayer> answer = new ShapefileReader(folder.resolve("streams.SHP"), PLACE).read();

        assertThat(answer.problems()).isEmpty();
        assertThat(answer.value().orElseThrow().shape().crs()).isPresent();
    }

    @Test
    void readsWithoutItsIndexJustTheSame() throws Exception {
        oneLine().record(nothing()).row(" ", "TOL").write(folder);
        Checked<FeatureLayer> indexed = read();
        Files.delete(folder.resolve("streams.shx"));

        assertThat(indexed.value().orElseThrow().features()).hasSize(2);
        assertThat(read()).isEqualTo(indexed);
    }

    @Test
    void saysThatTheTableIsMissing() throws Exception {
        oneLine().write(folder);
        Files.delete(folder.resolve("streams.dbf"));

        assertThat(sentences())
                .containsExactly("streams.shp: there is no streams.dbf beside it, so nothing says what its lines are."
                        + " Allowed: a shapefile with its .shp, .dbf and .prj. Do: copy all files of that name into the"
                        + " folder");
    }

    @Test
    void hasNoSystemWithoutAPrj() throws Exception {
        oneLine().write(folder);
        Files.delete(folder.resolve("streams.prj"));

        assertThat(read().value().orElseThrow().shape().crs()).isEmpty();
    }

    @Test
    void refusesAFileThatIsNone() throws Exception {
        oneLine().write(folder);
        byte[] random = new byte[5000];
        new Random(7).nextBytes(random);
        for (byte[] other : List.of(random, new byte[50], "PK".getBytes(UTF_8))) {
            Files.write(folder.resolve("streams.shp"), other);
            assertThat(sentences())
                    .containsExactly("streams.shp: the file is not a shapefile: its first bytes are something else."
                            + " Allowed: a shapefile (.shp). Do: export the layer again as shapefile, or better as"
                            + " GeoPackage");
        }
    }

    @Test
    void refusesShapesOfAKindThatIsNotRead() throws Exception {
        new ShapefileBytes(31).record(nothing()).row(" ").write(folder);
        assertThat(sentences())
                .singleElement()
                .asString()
                .startsWith("streams.shp: its shapes are of type 31, which is not");
    }

    @Test
    void saysWhereAFileBreaksOff() throws Exception {
        oneLine().write(folder);
        Path shp = folder.resolve("streams.shp");
        Files.write(shp, Arrays.copyOf(Files.readAllBytes(shp), 150));
        assertThat(sentences())
                .containsExactly("streams.shp: the file breaks off: it has 150 bytes and should have 204. Allowed: a"
                        + " whole .shp. Do: copy it again from where it came from");

        oneLine().write(folder);
        Path dbf = folder.resolve("streams.dbf");
        Files.write(dbf, Arrays.copyOf(Files.readAllBytes(dbf), 240));
        assertThat(sentences())
                .containsExactly("streams.dbf: the file breaks off: it has 240 bytes and should have 269. Allowed: a"
                        + " whole .dbf. Do: copy it again from where it came from");
    }

    @Test
    void saysWhichRecordLiesAboutItsLength() throws Exception {
        oneLine().record(parts(3, LINE)).row(" ", "TOL").write(folder);
        Path shp = folder.resolve("streams.shp");
        byte[] lying = Files.readAllBytes(shp);
        ByteBuffer.wrap(lying).order(ByteOrder.BIG_ENDIAN).putInt(104, 1_000_000);
        Files.write(shp, lying);

        assertThat(sentences())
                .containsExactly("streams.shp, record 1: the record cannot be found: it states 2000000 bytes, and the"
                        + " file has 200 more; nothing was read from here on. Allowed: records whose stated lengths lead"
                        + " from one to the next. Do: copy the file again from where it came from, or export the layer"
                        + " again");
    }

    @Test
    void namesEachShapeThatCannotBeReadAndReadsTheOthers() throws Exception {
        byte[] tooFew = parts(3, LINE);
        ByteBuffer.wrap(tooFew).order(ByteOrder.LITTLE_ENDIAN).putInt(40, 4);
        byte[] huge = parts(3, LINE);
        ByteBuffer.wrap(huge).order(ByteOrder.LITTLE_ENDIAN).putInt(40, 2_000_000_000);
        byte[] negative = parts(3, LINE);
        ByteBuffer.wrap(negative).order(ByteOrder.LITTLE_ENDIAN).putInt(36, -1);
        new ShapefileBytes(3)
                .record(parts(3, new double[] {0, 0, Double.NaN, 1}))
                .row(" ")
                .record(parts(3, new double[] {0, 0, Double.POSITIVE_INFINITY, 1}))
                .row(" ")
                .record(point(1, 2))
                .row(" ")
                .record(tooFew)
                .row(" ")
                .record(huge)
                .row(" ")
                .record(negative)
                .row(" ")
                .record(parts(3, new double[] {0, 0}))
                .row(" ")
                .record(parts(3, LINE))
                .row(" ")
                .write(folder);

        assertThat(read().problems())
                .extracting(problem -> problem.place() + ": " + problem.found())
                .containsExactly(
                        "streams.shp, record 1: its shape has a coordinate that is not a number",
                        "streams.shp, record 2: its shape has a coordinate that is not a number",
                        "streams.shp, record 3: its shape is of type 1, and the file says that its shapes are of type 3",
                        "streams.shp, record 4: its shape has a record of 96 bytes, and its counts need 112",
                        "streams.shp, record 5: its shape says that it has 2000000000 vertices; at most 20000000 can be"
                                + " read",
                        "streams.shp, record 6: its shape says that it has -1 parts",
                        "streams.shp, record 7: its shape has a part from vertex 0 to 1, too few or out of order");
        assertThat(read().value().orElseThrow().features())
                .extracting(feature -> feature.geometry().isPresent())
                .containsExactly(false, false, false, false, false, false, false, true);
    }

    @Test
    void refusesARingThatIsNotClosed() throws Exception {
        new ShapefileBytes(5)
                .record(parts(5, new double[] {0, 0, 0, 10, 10, 10, 10, 0}))
                .row(" ")
                .write(folder);
        assertThat(read().problems())
                .extracting(Problem::found)
                .containsExactly("its shape has a ring that is not closed");
    }

    @Test
    void saysThatShapesAndRowsAreNotAsMany() throws Exception {
        oneLine().record(parts(3, LINE)).write(folder);
        assertThat(sentences())
                .containsExactly(
                        "streams.shp: the .shp has 2 shapes and the .dbf 1 rows, so nothing says which belongs to"
                                + " which. Allowed: one row for each shape. Do: copy all files of that name again from where they"
                                + " came from; do not sort the .dbf by itself");
    }

    @Test
    void saysWhatInTheTableCannotBeRead() throws Exception {
        lines().column("MEMO M 10 0")
                .record(parts(3, LINE))
                .row(" ", "BRN", "two", "4,50", "", "X", "20271399", "1")
                .write(folder);

        assertThat(read().problems())
                .extracting(problem -> problem.place() + ": " + problem.found())
                .containsExactly(
                        "streams.dbf, column DRY: 1 value is not what the column holds, the first \"X\" in record 1; taken"
                                + " for not known",
                        "streams.dbf, column ORDER: 1 value is not what the column holds, the first \"two\" in record 1;"
                                + " taken for not known",
                        "streams.dbf, column SEEN: 1 value is not what the column holds, the first \"20271399\" in record 1;"
                                + " taken for not known",
                        "streams.dbf, column WIDTH_M: 1 value is not what the column holds, the first \"4,50\" in record 1;"
                                + " taken for not known",
                        "streams.dbf, column MEMO: the column is of the kind M, which is not read here; it was left out");
    }

    @Test
    void refusesATableWhoseHeaderCannotBeTrue() throws Exception {
        oneLine().write(folder);
        Path dbf = folder.resolve("streams.dbf");
        byte[] lying = Files.readAllBytes(dbf);
        ByteBuffer.wrap(lying).order(ByteOrder.LITTLE_ENDIAN).putShort(10, (short) 7);
        Files.write(dbf, lying);
        assertThat(sentences())
                .containsExactly(
                        "streams.dbf: the table of the shapefile cannot be read: its columns need 44 bytes, and"
                                + " it states rows of 7. Allowed: a .dbf in the form of dBASE III. Do: copy it again from where it"
                                + " came from, or export the layer again");
    }
}
