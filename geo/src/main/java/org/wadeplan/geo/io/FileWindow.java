package org.wadeplan.geo.io;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Looks at any stretch of a file through one buffer of fixed size. Opens it for reading only. */
final class FileWindow implements Closeable {

    /** The longest stretch that can be looked at in one go. */
    static final int LARGEST = 1 << 18;

    private static final int VERTEX_BYTES = 16;

    private final FileChannel channel;
    private final long size;
    private final ByteBuffer buffer = ByteBuffer.allocate(LARGEST);
    private long start;
    private int filled;

    FileWindow(Path file) throws IOException {
        this.channel = FileChannel.open(file, StandardOpenOption.READ);
        this.size = channel.size();
    }

    long size() {
        return size;
    }

    /**
     * The bytes from an offset on, in a buffer whose position 0 is that offset; good until the next call.
     *
     * @throws EOFException where the file ends before
     */
    ByteBuffer at(long offset, int bytes) throws IOException {
        if (offset < start || offset + bytes > start + filled) {
            fill(offset);
        }
        if (offset + bytes > start + filled) {
            throw new EOFException();
        }
        return buffer.slice((int) (offset - start), bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private void fill(long offset) throws IOException {
        buffer.clear();
        start = offset;
        filled = 0;
        int read = channel.read(buffer, offset);
        while (read > 0) {
            filled += read;
            read = buffer.hasRemaining() ? channel.read(buffer, offset + filled) : 0;
        }
    }

    /** So many vertices, x and y by turns, little-endian. */
    double[] vertices(long offset, int count) throws IOException {
        double[] ordinates = new double[2 * count];
        int perWindow = LARGEST / VERTEX_BYTES;
        for (int first = 0; first < count; first += perWindow) {
            int some = Math.min(perWindow, count - first);
            at(offset + (long) first * VERTEX_BYTES, some * VERTEX_BYTES)
                    .asDoubleBuffer()
                    .get(ordinates, 2 * first, 2 * some);
        }
        return ordinates;
    }

    /** So many whole numbers of four bytes, little-endian. */
    int[] wholes(long offset, int count) throws IOException {
        int[] numbers = new int[count];
        int perWindow = LARGEST / Integer.BYTES;
        for (int first = 0; first < count; first += perWindow) {
            int some = Math.min(perWindow, count - first);
            at(offset + (long) first * Integer.BYTES, some * Integer.BYTES)
                    .asIntBuffer()
                    .get(numbers, first, some);
        }
        return numbers;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
