package org.wadeplan.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.planner.files.RoundCopy;

/** A copy of a demo round that a test may spoil. */
record TempRound(Path folder) {

    static TempRound copyOf(String demo, Path target) {
        try {
            RoundCopy.copy(CommandRun.demo(demo), target);
            return new TempRound(target);
        } catch (DiskException fault) {
            throw new IllegalStateException(fault);
        }
    }

    /** Puts a planted file of the troubled round over one of this copy. */
    TempRound planted(String bad, String over) {
        Path source = CommandRun.demo("ilvermoor-troubled").resolve("bad").resolve(bad);
        try {
            Files.copy(source, folder.resolve(over), StandardCopyOption.REPLACE_EXISTING);
            return this;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Replaces words that the file must hold. */
    TempRound with(String file, String old, String replacement) {
        try {
            Path path = folder.resolve(file);
            String text = Files.readString(path, StandardCharsets.UTF_8);
            if (!text.contains(old)) {
                throw new IllegalArgumentException(file + " does not hold " + old);
            }
            Files.writeString(path, text.replace(old, replacement), StandardCharsets.UTF_8);
            return this;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    TempRound without(String file) {
        try {
            Files.delete(folder.resolve(file));
            return this;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Every file below a folder with the SHA-256 of its bytes: equal before and after means that nothing was touched. */
    static SortedMap<String, String> content(Path folder) {
        SortedMap<String, String> content = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> files = all.filter(Files::isRegularFile).toList();
            for (Path file : files) {
                byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
                content.put(folder.relativize(file).toString(), HexFormat.of().formatHex(digest));
            }
            return content;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } catch (NoSuchAlgorithmException fault) {
            throw new IllegalStateException(fault);
        }
    }

    SortedMap<String, String> content() {
        return content(folder);
    }

    @Override
    public String toString() {
        return folder.toString();
    }
}
