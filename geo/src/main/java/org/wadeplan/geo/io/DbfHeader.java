package org.wadeplan.geo.io;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * The head of a .dbf. Source: dBASE III file format, table file header: count of rows at byte 4, length of the header at
 * 8, length of a row at 10, language at 29, then 32 bytes for each column up to a byte 13.
 */
record DbfHeader(int rowCount, int headerBytes, int rowBytes, int language, List<byte[]> descriptors) {

    private static final int HEAD = 32;
    private static final int DESCRIPTOR = 32;
    private static final byte END = 0x0D;
    private static final int NAME_BYTES = 11;

    static Checked<DbfHeader> read(FileWindow file, SourcePlace place) throws IOException {
        if (file.size() < HEAD + 1) {
            return Checked.failed(broken(place, "it has " + file.size() + " bytes, less than a header"));
        }
        ByteBuffer head = file.at(0, HEAD);
        int rows = head.getInt(4);
        int headerBytes = head.getShort(8) & 0xffff;
        int rowBytes = head.getShort(10) & 0xffff;
        int language = head.get(29) & 0xff;
        boolean mad = rows < 0 || headerBytes < HEAD + 1 || rowBytes < 1 || headerBytes > file.size();
        if (mad) {
            return Checked.failed(broken(
                    place,
                    "its header states " + rows + " rows of " + rowBytes + " bytes after a header of " + headerBytes));
        }
        List<byte[]> descriptors = descriptors(file, headerBytes);
        int needed = 1 + descriptors.stream().mapToInt(DbfHeader::width).sum();
        if (needed > rowBytes) {
            return Checked.failed(
                    broken(place, "its columns need " + needed + " bytes, and it states rows of " + rowBytes));
        }
        long expected = headerBytes + (long) rows * rowBytes;
        if (file.size() < expected) {
            return Checked.failed(Problem.error(
                    "file-truncated",
                    place,
                    "the file breaks off: it has " + file.size() + " bytes and should have " + expected,
                    "a whole .dbf",
                    "copy it again from where it came from"));
        }
        return Checked.of(new DbfHeader(rows, headerBytes, rowBytes, language, descriptors));
    }

    private static List<byte[]> descriptors(FileWindow file, int headerBytes) throws IOException {
        List<byte[]> descriptors = new ArrayList<>();
        for (int at = HEAD; at + DESCRIPTOR <= headerBytes; at += DESCRIPTOR) {
            byte[] descriptor = new byte[DESCRIPTOR];
            file.at(at, DESCRIPTOR).get(descriptor);
            if (descriptor[0] == END) {
                break;
            }
            descriptors.add(descriptor);
        }
        return List.copyOf(descriptors);
    }

    private static int width(byte[] descriptor) {
        return descriptor[16] & 0xff;
    }

    /** A name that comes twice gets a number, since names cut to ten letters often clash. */
    List<DbfColumn> columns(DbfText texts) {
        List<DbfColumn> columns = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        int start = 1;
        for (byte[] descriptor : descriptors) {
            int end = 0;
            while (end < NAME_BYTES && descriptor[end] != 0) {
                end++;
            }
            String name = texts.decoded(Arrays.copyOf(descriptor, end));
            String own = name;
            for (int n = 2; !taken.add(own.toLowerCase(Locale.ROOT)); n++) {
                own = name + "_" + n;
            }
            columns.add(new DbfColumn(own, (char) descriptor[11], start, width(descriptor), descriptor[17] & 0xff));
            start += width(descriptor);
        }
        return List.copyOf(columns);
    }

    private static Problem broken(SourcePlace place, String what) {
        return Problem.error(
                "dbf-broken",
                place,
                "the table of the shapefile cannot be read: " + what,
                "a .dbf in the form of dBASE III",
                "copy it again from where it came from, or export the layer again");
    }

    static Optional<Problem> missing(ShapefileParts parts) {
        return parts.beside(".dbf").isPresent()
                ? Optional.empty()
                : Optional.of(Problem.error(
                        "dbf-missing",
                        parts.place(),
                        "there is no " + parts.placeOfMissing(".dbf")
                                + " beside it, so nothing says what its lines are",
                        "a shapefile with its .shp, .dbf and .prj",
                        "copy all files of that name into the folder"));
    }
}
