package org.wadeplan.geo.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** What can be told about a file before anything tries to understand it. Reads at most its first 100 bytes. */
final class FileCheck {

    private static final byte[] SQLITE = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int HEADER_BYTES = 100;

    private FileCheck() {}

    /** Why the file cannot be read at all; empty where it can. */
    static Optional<Problem> readable(Path file, SourcePlace place, String kind) {
        if (!Files.exists(file)) {
            return problem("file-missing", place, "the file is not there", kind, "put it there or correct its name");
        }
        if (!Files.isRegularFile(file)) {
            return problem("file-not-a-file", place, "this is a folder, not a file", kind, "name the file in it");
        }
        if (!Files.isReadable(file)) {
            return problem("file-unreadable", place, "there is no permission to read it", kind, "allow reading it");
        }
        if (file.toFile().length() == 0) {
            return problem(
                    "file-empty", place, "the file is empty, 0 bytes", kind, "copy it again; the copy probably failed");
        }
        return Optional.empty();
    }

    /** Why the file is no whole GeoPackage, told by its header; empty where it looks like one. */
    static Optional<Problem> geoPackage(Path file, SourcePlace place) {
        String kind = "a GeoPackage (.gpkg)";
        Optional<Problem> unreadable = readable(file, place, kind);
        if (unreadable.isPresent()) {
            return unreadable;
        }
        byte[] header = header(file);
        boolean marked = header.length >= SQLITE.length && Arrays.equals(Arrays.copyOf(header, SQLITE.length), SQLITE);
        if (!marked) {
            return problem(
                    "not-geopackage",
                    place,
                    "the file is not a GeoPackage: its first bytes are something else",
                    kind,
                    "export the layer again as GeoPackage");
        }
        return header.length < HEADER_BYTES
                ? truncated(place, file.toFile().length(), HEADER_BYTES)
                : cut(file, place, header);
    }

    /** The header states the number of pages: a shorter file has been cut. Source: SQLite file format, 1.3. */
    private static Optional<Problem> cut(Path file, SourcePlace place, byte[] header) {
        ByteBuffer fields = ByteBuffer.wrap(header);
        int pageSize = fields.getShort(16) & 0xffff;
        long expectedBytes = (fields.getInt(28) & 0xffffffffL) * (pageSize == 1 ? 65536 : pageSize);
        boolean countIsCurrent = fields.getInt(24) == fields.getInt(92);
        long bytes = file.toFile().length();
        return countIsCurrent && bytes < expectedBytes ? truncated(place, bytes, expectedBytes) : Optional.empty();
    }

    private static Optional<Problem> truncated(SourcePlace place, long bytes, long expectedBytes) {
        return problem(
                "file-truncated",
                place,
                "the file breaks off: it has " + bytes + " bytes and should have " + expectedBytes,
                "a whole GeoPackage",
                "copy it again from where it came from");
    }

    private static byte[] header(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(HEADER_BYTES);
        } catch (IOException unreadable) {
            return new byte[0];
        }
    }

    private static Optional<Problem> problem(
            String code, SourcePlace place, String found, String expected, String remedy) {
        return Optional.of(Problem.error(code, place, found, expected, remedy));
    }
}
