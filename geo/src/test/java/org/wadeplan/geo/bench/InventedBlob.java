package org.wadeplan.geo.bench;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/** Lines in the binary form of a GeoPackage, written without the project's own writer. Source: OGC GeoPackage 1.3, 2.1.3. */
final class InventedBlob {

    private static final int HEADER = 8;
    private static final int BOX = 32;
    private static final int START = 9;
    private static final int VERTEX = 16;

    private InventedBlob() {}

    /** One line of the first so many x, y, x, y …; none give an empty line. */
    static byte[] line(double[] eastNorth, int count, int srs) {
        byte[] blob = new byte[(count == 0 ? HEADER : HEADER + BOX) + START + VERTEX * count];
        ByteBuffer bytes = header(blob, eastNorth, count, srs);
        part(bytes, eastNorth, 0, count);
        return blob;
    }

    /** The same line in two parts that share a vertex in the middle. */
    static byte[] twoParts(double[] eastNorth, int count, int srs) {
        byte[] blob = new byte[HEADER + BOX + 3 * START + VERTEX * (count + 1)];
        ByteBuffer bytes = header(blob, eastNorth, count, srs);
        bytes.put((byte) 1).putInt(5).putInt(2);
        part(bytes, eastNorth, 0, count / 2 + 1);
        part(bytes, eastNorth, count / 2, count);
        return blob;
    }

    private static void part(ByteBuffer bytes, double[] eastNorth, int from, int to) {
        bytes.put((byte) 1).putInt(2).putInt(to - from);
        for (int i = 2 * from; i < 2 * to; i++) {
            bytes.putDouble(eastNorth[i]);
        }
    }

    private static ByteBuffer header(byte[] blob, double[] eastNorth, int count, int srs) {
        ByteBuffer bytes = ByteBuffer.wrap(blob).order(ByteOrder.LITTLE_ENDIAN);
        int flags = count == 0 ? 0b10001 : 0b11;
        bytes.put((byte) 'G').put((byte) 'P').put((byte) 0).put((byte) flags).putInt(srs);
        if (count > 0) {
            double[] box = {eastNorth[0], eastNorth[0], eastNorth[1], eastNorth[1]};
            for (int i = 1; i < count; i++) {
                box[0] = Math.min(box[0], eastNorth[2 * i]);
                box[1] = Math.max(box[1], eastNorth[2 * i]);
                box[2] = Math.min(box[2], eastNorth[2 * i + 1]);
                box[3] = Math.max(box[3], eastNorth[2 * i + 1]);
            }
            Arrays.stream(box).forEach(bytes::putDouble);
        }
        return bytes;
    }
}
