package org.wadeplan.geo.terrain;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteOrder;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.stream.ImageInputStream;

/**
 * How far the cells of a TIFF file's first image reach: the reader does not look before it unpacks, and fills up what is
 * missing with zeros.
 *
 * <p>Source: TIFF 6.0, section 2; BigTIFF is the same with eight bytes for each place and count.
 */
final class TiffExtent {

    private static final int[] OFFSETS = {273, 324};
    private static final int[] SIZES = {279, 325};
    private static final int TWO_BYTES = 3;
    private static final int FOUR_BYTES = 4;
    private static final int EIGHT_BYTES = 16;
    private static final long MOST_ENTRIES = 4096;

    /** A list of numbers in the file. */
    private record Entry(int type, long count, long at) {}

    private final ImageInputStream in;
    private final boolean big;
    private final Map<Integer, Entry> entries = new TreeMap<>();

    private TiffExtent(ImageInputStream in, boolean big) {
        this.in = in;
        this.big = big;
    }

    /**
     * The number of the byte after the last that any strip or tile needs.
     *
     * @throws EOFException where the file ends before its own lists do
     * @throws IOException where it lists no strips or tiles
     */
    static long endByte(ImageInputStream in) throws IOException {
        in.seek(0);
        in.setByteOrder(in.read() == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        in.seek(2);
        TiffExtent file = new TiffExtent(in, in.readUnsignedShort() == 43);
        file.directory();
        long end = 0;
        for (int kind = 0; kind < OFFSETS.length; kind++) {
            end = Math.max(end, file.end(OFFSETS[kind], SIZES[kind]));
        }
        if (end == 0) {
            throw new IOException("No strips or tiles");
        }
        return end;
    }

    private void directory() throws IOException {
        in.seek(big ? 8 : 4);
        in.seek(big ? in.readLong() : in.readUnsignedInt());
        long count = big ? in.readLong() : in.readUnsignedShort();
        if (count < 1 || count > MOST_ENTRIES) {
            throw new IOException("Not a directory");
        }
        long first = in.getStreamPosition();
        int size = big ? 20 : 12;
        for (int i = 0; i < count; i++) {
            in.seek(first + (long) i * size);
            entry();
        }
    }

    /** A list that fits into the entry stands in it; else the entry says where it stands. */
    private void entry() throws IOException {
        int tag = in.readUnsignedShort();
        int type = in.readUnsignedShort();
        long count = big ? in.readLong() : in.readUnsignedInt();
        long here = in.getStreamPosition();
        long place = big ? in.readLong() : in.readUnsignedInt();
        boolean fits = count * width(type) <= (big ? 8 : 4);
        entries.put(tag, new Entry(type, count, fits ? here : place));
    }

    private static int width(int type) {
        return type == TWO_BYTES ? 2 : type == FOUR_BYTES ? 4 : type == EIGHT_BYTES ? 8 : 1;
    }

    private long end(int offsetTag, int sizeTag) throws IOException {
        Entry offsets = entries.get(offsetTag);
        Entry sizes = entries.get(sizeTag);
        if (offsets == null || sizes == null) {
            return 0;
        }
        long listsEnd = Math.max(listEnd(offsets), listEnd(sizes));
        if (offsets.count() != sizes.count() || offsets.count() < 1 || listsEnd > in.length()) {
            throw new EOFException("Lists of strips or tiles are not whole");
        }
        long end = 0;
        for (long i = 0; i < offsets.count(); i++) {
            end = Math.max(end, number(offsets, i) + number(sizes, i));
        }
        return end;
    }

    private static long listEnd(Entry list) {
        return list.at() + list.count() * width(list.type());
    }

    private long number(Entry list, long index) throws IOException {
        in.seek(list.at() + index * width(list.type()));
        return switch (list.type()) {
            case TWO_BYTES -> in.readUnsignedShort();
            case FOUR_BYTES -> in.readUnsignedInt();
            case EIGHT_BYTES -> in.readLong();
            default -> throw new IOException("A list of strips or tiles of an unknown type");
        };
    }
}
