package org.wadeplan.geo.io;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.impl.PackedCoordinateSequenceFactory;
import org.locationtech.jts.io.ByteArrayInStream;
import org.locationtech.jts.io.ByteOrderValues;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.locationtech.jts.io.WKBWriter;

/**
 * The binary form of a shape in a GeoPackage: a header with flags, system and envelope, then standard WKB.
 *
 * <p>Source: OGC GeoPackage 1.3, clause 2.1.3 (GeoPackageBinaryHeader).
 */
final class GeometryBlob {

    private static final int LITTLE_ENDIAN = 0b1;
    private static final int XY_ENVELOPE = 0b10;
    private static final int EMPTY = 0b10000;
    private static final int EXTENDED = 0b100000;

    /** Bytes of the envelope by its indicator: none, xy, xyz, xym, xyzm. */
    private static final int[] ENVELOPE_BYTES = {0, 32, 48, 48, 64};

    /** Above this, vertices are kept as plain numbers: as objects they would take three times the room. */
    private static final int LARGE_BYTES = 1 << 20;

    private GeometryBlob() {}

    /** Little-endian, with an xy envelope for everything but points and empty shapes. */
    static byte[] encode(Geometry geometry, int srsId) {
        boolean boxed = !geometry.isEmpty() && !(geometry instanceof Point);
        byte[] shape = new WKBWriter(2, ByteOrderValues.LITTLE_ENDIAN, false).write(geometry);
        ByteBuffer blob =
                ByteBuffer.allocate(8 + (boxed ? 32 : 0) + shape.length).order(ByteOrder.LITTLE_ENDIAN);
        int flags = LITTLE_ENDIAN | (boxed ? XY_ENVELOPE : 0) | (geometry.isEmpty() ? EMPTY : 0);
        blob.put((byte) 'G').put((byte) 'P').put((byte) 0).put((byte) flags).putInt(srsId);
        if (boxed) {
            Envelope box = geometry.getEnvelopeInternal();
            blob.putDouble(box.getMinX()).putDouble(box.getMaxX());
            blob.putDouble(box.getMinY()).putDouble(box.getMaxY());
        }
        return blob.put(shape).array();
    }

    /** @throws ParseException with a phrase for a person, where the bytes are no shape that can be read */
    static Geometry decode(byte[] blob) throws ParseException {
        if (blob.length < 8 || blob[0] != 'G' || blob[1] != 'P') {
            throw new ParseException("does not begin with the mark of a GeoPackage shape");
        }
        int flags = blob[3];
        if ((flags & EXTENDED) != 0) {
            throw new ParseException("is of an extended kind that only its maker can read");
        }
        int envelope = (flags >> 1) & 0b111;
        if (envelope >= ENVELOPE_BYTES.length || blob.length < 8 + ENVELOPE_BYTES[envelope]) {
            throw new ParseException("has a broken header");
        }
        try {
            return finite(wkb(blob, 8 + ENVELOPE_BYTES[envelope]));
        } catch (NotFinite nowhere) {
            throw nowhere;
        } catch (ParseException | IllegalArgumentException broken) {
            throw new ParseException("breaks off or is damaged");
        }
    }

    private static Geometry wkb(byte[] blob, int from) throws ParseException {
        ByteArrayInStream bytes = new ByteArrayInStream(Arrays.copyOfRange(blob, from, blob.length));
        GeometryFactory shapes = blob.length > LARGE_BYTES
                ? new GeometryFactory(PackedCoordinateSequenceFactory.DOUBLE_FACTORY)
                : new GeometryFactory();
        try {
            return new WKBReader(shapes).read(bytes);
        } catch (IOException impossible) {
            throw new ParseException(impossible);
        }
    }

    private static Geometry finite(Geometry shape) throws NotFinite {
        if (!FiniteVertices.all(shape)) {
            throw new NotFinite();
        }
        return shape;
    }

    /** A shape that can be taken apart, but has a vertex nowhere. */
    private static final class NotFinite extends ParseException {
        NotFinite() {
            super("has a coordinate that is not a number");
        }
    }
}
