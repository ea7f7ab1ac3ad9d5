package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.lines.LineReading;
import org.wadeplan.geo.lines.LineReading.LeftOut;
import org.wadeplan.geo.lines.LineReading.Reason;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Shapes are written here byte by byte as OGC GeoPackage 1.3, 2.1.3, and OGC 06-103r4, 8.2, say. */
class GeoPackageLinesTest {

    private static final SourcePlace PLACE = SourcePlace.file("streams.gpkg");

    @TempDir
    Path folder;

    private Path file;
    private int rows;

    @BeforeEach
    void emptyLayer() throws Exception {
        file = folder.resolve("streams.gpkg");
        CoordinateSystem utm27 =
                CoordinateSystem.named("EPSG:32627", PLACE).value().orElseThrow();
        LayerShape shape = new LayerShape(
                "Streams", Optional.of(StatedSystem.code("EPSG:32627")), LayerShape.Kind.GEOMETRY, List.of());
        new GeoPackageWriter(utm27, Instant.EPOCH).write(file, List.of(new FeatureLayer(shape, List.of())));
    }

    private void row(byte[] blob) throws SQLException {
        PlainSql.change(
                file,
                "INSERT INTO Streams VALUES (" + ++rows + ", X'"
                        + HexFormat.of().formatHex(blob) + "')");
    }

    private Checked<LineReading> read() {
        return new GeoPackageLines(file, PLACE).read("streams");
    }

    /** The header without an envelope, then what follows. */
    private static byte[] blob(int flags, byte[]... parts) {
        ByteBuffer blob = ByteBuffer.allocate(4096);
        blob.put((byte) 'G').put((byte) 'P').put((byte) 0).put((byte) flags).putInt(0);
        for (byte[] part : parts) {
            blob.put(part);
        }
        byte[] bytes = new byte[blob.position()];
        blob.flip().get(bytes);
        return bytes;
    }

    private static byte[] wkb(ByteOrder order, int type, int count, double... numbers) {
        ByteBuffer wkb = ByteBuffer.allocate(9 + 8 * numbers.length).order(order);
        wkb.put((byte) (order == ByteOrder.LITTLE_ENDIAN ? 1 : 0)).putInt(type).putInt(count);
        for (double number : numbers) {
            wkb.putDouble(number);
        }
        byte[] bytes = new byte[wkb.capacity()];
        wkb.flip().get(bytes);
        return bytes;
    }

    private static byte[] line(double... eastNorth) {
        return wkb(ByteOrder.LITTLE_ENDIAN, 2, eastNorth.length / 2, eastNorth);
    }

    private static List<String> words(LineSet lines) {
        List<String> words = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            words.add(lines.id(line) + " " + lines.shape(line));
        }
        return words;
    }

    @Test
    void linesOfEveryByteOrderAndDimensionBecomeTheSameLine() throws Exception {
        ByteOrder little = ByteOrder.LITTLE_ENDIAN;
        row(blob(0b1, line(0, 0, 3, 4)));
        row(blob(0b0, wkb(ByteOrder.BIG_ENDIAN, 2, 2, 0, 0, 3, 4)));
        row(blob(0b1, wkb(little, 1002, 2, 0, 0, 99, 3, 4, 98)));
        row(blob(0b1, wkb(little, 2002, 2, 0, 0, 99, 3, 4, 98)));
        row(blob(0b1, wkb(little, 3002, 2, 0, 0, 99, 7, 3, 4, 98, 7)));
        row(blob(0b1, wkb(little, 0x80000002, 2, 0, 0, 99, 3, 4, 98)));
        row(blob(0b11, new byte[32], line(0, 0, 3, 4)));
        row(blob(0b101, new byte[48], line(0, 0, 3, 4)));
        row(blob(0b111, new byte[48], line(0, 0, 3, 4)));
        row(blob(0b1001, new byte[64], line(0, 0, 3, 4)));

        Checked<LineReading> read = read();

        assertThat(read.problems()).isEmpty();
        LineSet lines = read.value().orElseThrow().lines();
        assertThat(lines.lineCount()).isEqualTo(10);
        for (int line = 0; line < 10; line++) {
            assertThat(lines.id(line) + " " + lines.shape(line)).isEqualTo((line + 1) + " LINESTRING (0 0, 3 4)");
        }
    }

    @Test
    void partsBecomeLinesOfTheirOwnAndASinglePartKeepsTheFeaturesId() throws Exception {
        row(blob(0b1, wkb(ByteOrder.LITTLE_ENDIAN, 5, 2), line(0, 0, 3, 4), line(3, 4, 9, 9)));
        row(blob(0b1, wkb(ByteOrder.LITTLE_ENDIAN, 5, 1), line(1, 1, 2, 2)));
        row(blob(
                0b1,
                wkb(ByteOrder.LITTLE_ENDIAN, 7, 2),
                line(0, 0, 0, 1),
                wkb(ByteOrder.BIG_ENDIAN, 2, 2, 0, 1, 1, 1)));

        assertThat(words(read().value().orElseThrow().lines()))
                .containsExactly(
                        "1/1 LINESTRING (0 0, 3 4)",
                        "1/2 LINESTRING (3 4, 9 9)",
                        "2 LINESTRING (1 1, 2 2)",
                        "3/1 LINESTRING (0 0, 0 1)",
                        "3/2 LINESTRING (0 1, 1 1)");
    }

    @Test
    void everyShapeThatIsNoLineIsListedWithItsReason() throws Exception {
        PlainSql.change(file, "INSERT INTO Streams VALUES (" + ++rows + ", NULL)");
        row(blob(0b10001, line()));
        row(blob(0b1, line()));
        row(blob(0b1, wkb(ByteOrder.LITTLE_ENDIAN, 5, 0)));
        row(blob(0b1, line(5, 5, 5, 5)));
        row(blob(0b1, line(5, 5, Double.NaN, 5)));
        row(blob(0b1, line(5, 5, 6, Double.POSITIVE_INFINITY)));
        row(blob(0b1, line(5, 5, 1e300, 5)));
        row(blob(0b1, wkb(ByteOrder.LITTLE_ENDIAN, 8, 3, 0, 0, 1, 1, 2, 0)));
        row(blob(0b1, wkb(ByteOrder.LITTLE_ENDIAN, 2, 1000, 0, 0, 1, 1)));
        row(new byte[] {'G', 'P', 0});
        row(blob(0b100001, line(0, 0, 1, 1)));
        row(blob(0b1, wkb(ByteOrder.LITTLE_ENDIAN, 5, 3), line(0, 0, 3, 4), line(7, 7, 7, 7), line(1, 2, 8, 9)));

        Checked<LineReading> read = read();

        assertThat(read.value().orElseThrow().leftOut())
                .containsExactly(
                        new LeftOut("1", Reason.NO_SHAPE),
                        new LeftOut("2", Reason.EMPTY),
                        new LeftOut("3", Reason.EMPTY),
                        new LeftOut("4", Reason.EMPTY),
                        new LeftOut("5", Reason.NO_LENGTH),
                        new LeftOut("6", Reason.NOT_FINITE),
                        new LeftOut("7", Reason.NOT_FINITE),
                        new LeftOut("8", Reason.NOT_FINITE),
                        new LeftOut("9", Reason.NOT_A_LINE),
                        new LeftOut("10", Reason.UNREADABLE),
                        new LeftOut("11", Reason.UNREADABLE),
                        new LeftOut("12", Reason.UNREADABLE),
                        new LeftOut("13/2", Reason.NO_LENGTH));
        assertThat(words(read.value().orElseThrow().lines()))
                .containsExactly("13/1 LINESTRING (0 0, 3 4)", "13/3 LINESTRING (1 2, 8 9)");
        assertThat(read.problems())
                .extracting(Problem::sentence)
                .contains("streams.gpkg, streams: 2 of its shapes have no length: all vertices lie in one place:"
                        + " features 5, 13/2. Allowed: lines of two or more different vertices. Do: nothing, if no stream"
                        + " is missing; else draw these features again")
                .hasSize(6);
    }

    @Test
    void aLongListOfFaultsNamesTheFirstFewAndCountsTheRest() throws Exception {
        for (int i = 0; i < 8; i++) {
            row(blob(0b1, line(5, 5, 5, 5)));
        }

        assertThat(read().problems())
                .extracting(Problem::found)
                .containsExactly(
                        "8 of its shapes have no length: all vertices lie in one place: features 1, 2, 3, 4, 5 and 3 more");
    }

    @Test
    void neitherTheFileNorItsFolderIsTouched() throws Exception {
        row(blob(0b1, line(0, 0, 3, 4)));
        byte[] before = Files.readAllBytes(file);

        read();

        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        try (var all = Files.list(folder)) {
            assertThat(all).containsExactly(file);
        }
    }

    @Test
    void aLayerThatIsNotThereIsRefusedInWords() {
        assertThat(new GeoPackageLines(file, PLACE).read("rivers").problems())
                .extracting(Problem::code)
                .containsExactly("layer-missing");
    }
}
