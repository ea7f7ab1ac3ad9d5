package org.wadeplan.geo.io;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.wadeplan.geo.problem.DiskException;

/** Writes a file whole or not at all: a temporary file in the same folder is filled, then moved over the target. */
public final class WholeFile {

    private WholeFile() {}

    /** Fills the temporary file. */
    @FunctionalInterface
    public interface Filling {
        void fill(Path temporary) throws IOException;
    }

    /**
     * Has a temporary file filled and moves it over the target.
     *
     * @throws DiskException where the folder cannot be written to; the target is then as it was
     */
    public static void write(Path target, Filling filling) throws DiskException {
        Path absolute = target.toAbsolutePath();
        Path folder = absolute.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new DiskException(
                    target,
                    "its folder does not exist",
                    "make the folder, or name another",
                    new IOException("no folder"));
        }
        Path temporary = folder.resolve("." + absolute.getFileName() + ".part");
        try {
            Files.deleteIfExists(temporary);
            filling.fill(temporary);
            move(temporary, absolute);
        } catch (IOException refused) {
            throw new DiskException(
                    target,
                    "could not be written (" + reason(refused) + ")",
                    "check that the folder is not read-only or full, or name another",
                    refused);
        } finally {
            remove(temporary);
        }
    }

    /** Writes text as UTF-8. */
    public static void write(Path target, String text) throws DiskException {
        write(target, temporary -> Files.write(temporary, text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Writes text as UTF-8, and keeps what stood there before beside it as {@code .bak}. */
    public static void writeKeepingPrevious(Path target, String text) throws DiskException {
        Path absolute = target.toAbsolutePath();
        write(target, temporary -> {
            Files.write(temporary, text.getBytes(StandardCharsets.UTF_8));
            if (Files.exists(absolute)) {
                Path previous = absolute.resolveSibling(absolute.getFileName() + ".bak");
                Files.copy(absolute, previous, StandardCopyOption.REPLACE_EXISTING);
            }
        });
    }

    private static void move(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException someShares) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void remove(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException left) {
            // The target is whole either way, and the first failure is the one worth reporting.
        }
    }

    private static String reason(IOException refused) {
        if (refused instanceof java.nio.file.AccessDeniedException) {
            return "no permission";
        }
        String words = refused.getMessage();
        return words == null ? "no reason given" : words;
    }
}
