package org.wadeplan.geo.io;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Where the records of a .shp stand: by its .shx where there is one, else one after the other.
 *
 * <p>Source: ESRI Shapefile Technical Description, July 1998, pages 3-4 and 23: a header of 100 bytes, then for each
 * record its number and its length in words of two bytes, big-endian, and its content.
 */
final class ShpRecords implements Closeable {

    private static final int HEAD = 100;
    private static final int MARK = 9994;
    private static final int RECORD_HEAD = 8;

    private final FileWindow shp;
    private final Optional<FileWindow> shx;
    private final SourcePlace place;
    private final int type;
    private final long end;

    private long next = HEAD;
    private int number;

    private ShpRecords(FileWindow shp, Optional<FileWindow> shx, SourcePlace place, int type, long end) {
        this.shp = shp;
        this.shx = shx;
        this.place = place;
        this.type = type;
        this.end = end;
    }

    /**
     * Where one record's content stands.
     *
     * @param number counted from 1
     */
    record Content(int number, long offset, long bytes) {}

    /** Takes over both windows where it gives a value. */
    static Checked<ShpRecords> open(FileWindow shp, Optional<FileWindow> shx, SourcePlace place) throws IOException {
        Optional<ByteBuffer> head = head(shp);
        if (head.isEmpty()) {
            return Checked.failed(Problem.error(
                    "not-shapefile",
                    place,
                    "the file is not a shapefile: its first bytes are something else",
                    "a shapefile (.shp)",
                    "export the layer again as shapefile, or better as GeoPackage"));
        }
        int type = head.get().order(ByteOrder.LITTLE_ENDIAN).getInt(32);
        long stated = 2L * head.get().order(ByteOrder.BIG_ENDIAN).getInt(24);
        if (ShpType.of(type).isEmpty()) {
            return Checked.failed(Problem.error(
                    "shp-type-unknown",
                    place,
                    "its shapes are of type " + type + ", which is not read here",
                    "points, lines or areas (types 1, 3, 5 and 8, and their forms with heights or measures)",
                    "export the layer again as lines, points or areas"));
        }
        if (stated > shp.size()) {
            return Checked.failed(Problem.error(
                    "file-truncated",
                    place,
                    "the file breaks off: it has " + shp.size() + " bytes and should have " + stated,
                    "a whole .shp",
                    "copy it again from where it came from"));
        }
        return Checked.of(new ShpRecords(shp, shx.filter(ShpRecords::isIndex), place, type, Math.max(stated, HEAD)));
    }

    private static Optional<ByteBuffer> head(FileWindow file) throws IOException {
        if (file.size() < HEAD) {
            return Optional.empty();
        }
        ByteBuffer head = file.at(0, HEAD).order(ByteOrder.BIG_ENDIAN);
        return head.getInt(0) == MARK ? Optional.of(head) : Optional.empty();
    }

    private static boolean isIndex(FileWindow shx) {
        try {
            return head(shx).isPresent();
        } catch (IOException closed) {
            return false;
        }
    }

    int type() {
        return type;
    }

    /** How many records the .shx lists; empty without one. */
    Optional<Integer> indexed() {
        return shx.map(index -> (int) ((index.size() - HEAD) / RECORD_HEAD));
    }

    /** The next record; empty at the end. */
    Checked<Optional<Content>> next() throws IOException {
        number++;
        if (shx.isPresent()) {
            if (number > indexed().orElseThrow()) {
                return Checked.of(Optional.empty());
            }
            ByteBuffer entry = shx.get()
                    .at(HEAD + (long) (number - 1) * RECORD_HEAD, RECORD_HEAD)
                    .order(ByteOrder.BIG_ENDIAN);
            next = 2L * (entry.getInt(0) & 0xffffffffL);
        } else if (next == end) {
            return Checked.of(Optional.empty());
        }
        return content();
    }

    private Checked<Optional<Content>> content() throws IOException {
        if (next < HEAD || next + RECORD_HEAD > end) {
            return Checked.failed(lost("it is said to begin at byte " + next + " of " + end));
        }
        try {
            long bytes =
                    2L * shp.at(next, RECORD_HEAD).order(ByteOrder.BIG_ENDIAN).getInt(4);
            long offset = next + RECORD_HEAD;
            if (bytes < 0 || offset + bytes > end) {
                return Checked.failed(
                        lost("it states " + bytes + " bytes, and the file has " + (end - offset) + " more"));
            }
            next = offset + bytes;
            return Checked.of(Optional.of(new Content(number, offset, bytes)));
        } catch (EOFException cut) {
            return Checked.failed(lost("the file ends in it"));
        }
    }

    private Problem lost(String what) {
        return Problem.error(
                "shp-record-lost",
                place.row("record " + number),
                "the record cannot be found: " + what + "; nothing was read from here on",
                "records whose stated lengths lead from one to the next",
                "copy the file again from where it came from, or export the layer again");
    }

    @Override
    public void close() throws IOException {
        shp.close();
        if (shx.isPresent()) {
            shx.get().close();
        }
    }
}
