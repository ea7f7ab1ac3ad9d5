package org.wadeplan.geo.demo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * A GeoTIFF of whole metres in one uncompressed strip: the same bytes on any machine.
 *
 * <p>Sources: TIFF 6.0, section 2; OGC GeoTIFF 1.1, GeoKeyDirectory; nodata as GDAL writes it.
 */
final class PlainGeoTiff {

    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int TEXT = 2;
    private static final int DOUBLE = 12;

    private record Tag(int type, int count, ByteBuffer value) {}

    private final Map<Integer, Tag> tags = new TreeMap<>();

    private PlainGeoTiff() {}

    /**
     * @param heights row by row from the north
     * @param epsg digits of the code of a projected system in metres
     */
    static byte[] of(short[] heights, int columns, double westM, double northM, double cellM, int epsg, short noData) {
        PlainGeoTiff file = new PlainGeoTiff();
        int rows = heights.length / columns;
        file.number(256, LONG, columns);
        file.number(257, LONG, rows);
        file.number(258, SHORT, 16);
        file.number(259, SHORT, 1);
        file.number(262, SHORT, 1);
        file.number(273, LONG, 0);
        file.number(277, SHORT, 1);
        file.number(278, LONG, rows);
        file.number(279, LONG, heights.length * 2);
        file.number(339, SHORT, 2);
        file.doubles(33550, cellM, cellM, 0);
        file.doubles(33922, 0, 0, 0, westM, northM, 0);
        // Version 1.1.0, three keys: projected, cells are areas, code of the system.
        file.shorts(34735, 1, 1, 0, 3, 1024, 0, 1, 1, 1025, 0, 1, 1, 3072, 0, 1, epsg);
        file.text(42113, Integer.toString(noData));
        return file.bytes(heights);
    }

    private static ByteBuffer buffer(int bytes) {
        return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private void number(int tag, int type, int value) {
        ByteBuffer bytes = buffer(type == SHORT ? 2 : 4);
        tags.put(tag, new Tag(type, 1, type == SHORT ? bytes.putShort((short) value) : bytes.putInt(value)));
    }

    private void doubles(int tag, double... values) {
        ByteBuffer bytes = buffer(8 * values.length);
        for (double value : values) {
            bytes.putDouble(value);
        }
        tags.put(tag, new Tag(DOUBLE, values.length, bytes));
    }

    private void shorts(int tag, int... values) {
        ByteBuffer bytes = buffer(2 * values.length);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        tags.put(tag, new Tag(SHORT, values.length, bytes));
    }

    private void text(int tag, String words) {
        byte[] ascii = (words + "\0").getBytes(StandardCharsets.US_ASCII);
        tags.put(tag, new Tag(TEXT, ascii.length, buffer(ascii.length).put(ascii)));
    }

    /** Header, directory, values that do not fit into it, heights. */
    private byte[] bytes(short[] heights) {
        int directory = 8 + 2 + 12 * tags.size() + 4;
        int values = tags.values().stream()
                .mapToInt(tag -> tag.value().capacity() > 4 ? even(tag.value().capacity()) : 0)
                .sum();
        int strip = directory + values;
        number(273, LONG, strip);
        ByteBuffer file = buffer(strip + 2 * heights.length);
        file.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8).putShort((short) tags.size());
        int at = directory;
        for (Map.Entry<Integer, Tag> entry : tags.entrySet()) {
            Tag tag = entry.getValue();
            byte[] value = new byte[tag.value().capacity()];
            tag.value().duplicate().rewind().get(value);
            file.putShort(entry.getKey().shortValue())
                    .putShort((short) tag.type())
                    .putInt(tag.count());
            if (value.length > 4) {
                file.putInt(at);
                file.duplicate().order(ByteOrder.LITTLE_ENDIAN).position(at).put(value);
                at += even(value.length);
            } else {
                file.put(Arrays.copyOf(value, 4));
            }
        }
        file.position(strip);
        for (short height : heights) {
            file.putShort(height);
        }
        byte[] bytes = new byte[file.capacity()];
        file.rewind().get(bytes);
        return bytes;
    }

    private static int even(int bytes) {
        return bytes + bytes % 2;
    }
}
