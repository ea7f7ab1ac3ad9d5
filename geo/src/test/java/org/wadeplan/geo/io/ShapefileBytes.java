package org.wadeplan.geo.io;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Puts a shapefile together byte by byte, as the description of 1998 lays it out, so that any byte can be wrong. */
final class ShapefileBytes {

    static final String UTM27_PRJ = "PROJCS[\"WGS_1984_UTM_Zone_27N\",GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\","
            + "SPHEROID[\"WGS_1984\",6378137.0,298.257223563]],PRIMEM[\"Greenwich\",0.0],"
            + "UNIT[\"Degree\",0.0174532925199433]],PROJECTION[\"Transverse_Mercator\"],"
            + "PARAMETER[\"False_Easting\",500000.0],PARAMETER[\"False_Northing\",0.0],"
            + "PARAMETER[\"Central_Meridian\",-21.0],PARAMETER[\"Scale_Factor\",0.9996],"
            + "PARAMETER[\"Latitude_Of_Origin\",0.0],UNIT[\"Meter\",1.0]]";

    private final int type;
    private final List<byte[]> records = new ArrayList<>();
    private final List<String> columns = new ArrayList<>();
    private final List<byte[]> rows = new ArrayList<>();
    private Charset charset = StandardCharsets.UTF_8;
    private int language;

    ShapefileBytes(int type) {
        this.type = type;
    }

    /** Texts are stored so, and the header's byte 29 says this. */
    ShapefileBytes stored(Charset how, int languageByte) {
        charset = how;
        language = languageByte;
        return this;
    }

    /** A column as {@code NAME C 10 0}. */
    ShapefileBytes column(String description) {
        columns.add(description);
        return this;
    }

    /** A record whose content is these bytes. */
    ShapefileBytes record(byte[] content) {
        records.add(content);
        return this;
    }

    /** A row of the table, its mark first, a space or an asterisk; cells that are not given are blank. */
    ShapefileBytes row(String mark, String... cells) {
        ByteArrayOutputStream row = new ByteArrayOutputStream();
        row.writeBytes(mark.getBytes(charset));
        for (int i = 0; i < columns.size(); i++) {
            byte[] cell = new byte[width(columns.get(i))];
            Arrays.fill(cell, (byte) ' ');
            byte[] text = (i < cells.length ? cells[i] : "").getBytes(charset);
            System.arraycopy(text, 0, cell, 0, text.length);
            row.writeBytes(cell);
        }
        rows.add(row.toByteArray());
        return this;
    }

    private static int width(String column) {
        return Integer.parseInt(column.split(" ", -1)[2]);
    }

    static byte[] nothing() {
        return little(4).putInt(0).array();
    }

    static byte[] point(double x, double y) {
        return little(20).putInt(1).putDouble(x).putDouble(y).array();
    }

    /** Lines or areas; each part x, y by turns. */
    static byte[] parts(int type, double[]... parts) {
        int vertices = 0;
        for (double[] part : parts) {
            vertices += part.length / 2;
        }
        ByteBuffer content = little(44 + 4 * parts.length + 16 * vertices);
        content.putInt(type).position(36).putInt(parts.length).putInt(vertices);
        int first = 0;
        for (double[] part : parts) {
            content.putInt(first);
            first += part.length / 2;
        }
        for (double[] part : parts) {
            for (double ordinate : part) {
                content.putDouble(ordinate);
            }
        }
        return bytes(content);
    }

    private static byte[] bytes(ByteBuffer filled) {
        byte[] all = new byte[filled.capacity()];
        filled.rewind().get(all);
        return all;
    }

    static ByteBuffer little(int bytes) {
        return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private byte[] head(int bytes) {
        ByteBuffer head = ByteBuffer.allocate(100);
        head.putInt(9994).position(24).putInt(bytes / 2);
        head.order(ByteOrder.LITTLE_ENDIAN).putInt(1000).putInt(type);
        return head.array();
    }

    byte[] shp() {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        int number = 1;
        for (byte[] content : records) {
            body.writeBytes(ByteBuffer.allocate(8)
                    .putInt(number++)
                    .putInt(content.length / 2)
                    .array());
            body.writeBytes(content);
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(head(100 + body.size()));
        whole.writeBytes(body.toByteArray());
        return whole.toByteArray();
    }

    byte[] shx() {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(head(100 + 8 * records.size()));
        int at = 100;
        for (byte[] content : records) {
            whole.writeBytes(ByteBuffer.allocate(8)
                    .putInt(at / 2)
                    .putInt(content.length / 2)
                    .array());
            at += 8 + content.length;
        }
        return whole.toByteArray();
    }

    byte[] dbf() {
        int rowBytes = 1 + columns.stream().mapToInt(ShapefileBytes::width).sum();
        int headBytes = 32 + 32 * columns.size() + 1;
        ByteBuffer head = little(headBytes);
        head.put((byte) 3).position(4).putInt(rows.size());
        head.putShort((short) headBytes).putShort((short) rowBytes).position(29).put((byte) language);
        for (int i = 0; i < columns.size(); i++) {
            String[] column = columns.get(i).split(" ", -1);
            head.position(32 + 32 * i).put(column[0].getBytes(charset));
            head.position(32 + 32 * i + 11).put((byte) column[1].charAt(0));
            head.position(32 + 32 * i + 16).put((byte) Integer.parseInt(column[2]));
            head.put((byte) Integer.parseInt(column[3]));
        }
        head.position(headBytes - 1).put((byte) 0x0D);
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(bytes(head));
        rows.forEach(whole::writeBytes);
        whole.write(0x1A);
        return whole.toByteArray();
    }

    /** Writes .shp, .shx, .dbf and .prj. */
    Path write(Path folder) throws IOException {
        Files.write(folder.resolve("streams.shx"), shx());
        Files.write(folder.resolve("streams.dbf"), dbf());
        Files.writeString(folder.resolve("streams.prj"), UTM27_PRJ);
        return Files.write(folder.resolve("streams.shp"), shp());
    }
}
