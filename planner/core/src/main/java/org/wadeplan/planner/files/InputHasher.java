package org.wadeplan.planner.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import org.wadeplan.geo.io.ShapefileReader;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.planner.round.InputHash;

/**
 * Fingerprints exactly the files that a plan is made from: {@code round.json} and each file that holds a part of the
 * round.
 *
 * <p>A file that was refused from outside, for its size for instance, is left out as well: its problem is an error.
 *
 * <p>Everything else in the folder is left out, because no plan depends on it: private files, {@code plan.json} and what
 * else Wadeplan writes, {@code .bak} copies, {@code datapackage.json}, the README, and the folders {@code expected/},
 * {@code bad/}, {@code events/} and {@code returned/}.
 */
final class InputHasher {

    private InputHasher() {}

    /** By name; the whole is the SHA-256 of the lines "hash, two spaces, name, line feed" in that order. */
    static Checked<InputHash> of(RoundFolder folder) {
        SortedMap<String, String> byFile = new TreeMap<>();
        try {
            byFile.put(RoundJson.FILE, sha256(folder.folder().resolve(RoundJson.FILE)));
            for (String part : RoundFolder.KNOWN) {
                if (folder.has(part)
                        && FileLimit.MAP.refusal(folder.path(part), part).isEmpty()) {
                    byFile.put(folder.nameOf(part), sha256(folder.path(part)));
                    addFilesBeside(folder, part, byFile);
                }
            }
        } catch (IOException changedMeanwhile) {
            return Checked.failed(FileLimit.unreadable(RoundJson.FILE));
        }
        StringBuilder lines = new StringBuilder();
        byFile.forEach(
                (name, hash) -> lines.append(hash).append("  ").append(name).append('\n'));
        String whole = HexFormat.of().formatHex(digest().digest(lines.toString().getBytes(StandardCharsets.UTF_8)));
        return Checked.of(new InputHash(whole, Collections.unmodifiableSortedMap(byFile)));
    }

    /** A shapefile is several files, and a plan depends on all of them. */
    private static void addFilesBeside(RoundFolder folder, String part, SortedMap<String, String> byFile)
            throws IOException {
        String name = folder.nameOf(part);
        if (name.toLowerCase(Locale.ROOT).endsWith(".shp")) {
            String folderOfName = name.substring(0, Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
            for (Path beside : ShapefileReader.filesBeside(folder.path(part))) {
                byFile.put(folderOfName + beside.getFileName(), sha256(beside));
            }
        }
    }

    private static String sha256(Path file) throws IOException {
        MessageDigest digest = digest();
        byte[] buffer = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(file)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
