package org.wadeplan.planner.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Looks at a file from outside before anything is read from it: a giant or a folder gets its answer at once. */
enum FileLimit {
    /** Tables and other text, which are held in memory whole. */
    TEXT(20),
    /** Map layers, which are read feature by feature. */
    MAP(2000);

    private static final long BYTES_PER_MB = 1_000_000;

    private final long maxMb;

    FileLimit(long maxMb) {
        this.maxMb = maxMb;
    }

    /** Why the file is not opened; empty where it may be. */
    Optional<Problem> refusal(Path file, String name) {
        if (!Files.exists(file)) {
            return Optional.of(missing(name));
        }
        if (!Files.isRegularFile(file)) {
            return Optional.of(problem(
                    "not-a-file", name, "there is a folder of that name where a file should be", "a file", "move it"));
        }
        if (!Files.isReadable(file)) {
            return Optional.of(unreadable(name));
        }
        long bytes = file.toFile().length();
        if (bytes == 0) {
            return Optional.of(problem(
                    "file-empty",
                    name,
                    "the file is empty, 0 bytes",
                    "a file with content",
                    "copy it again; the copy probably failed"));
        }
        return bytes > maxMb * BYTES_PER_MB ? Optional.of(tooLarge(name, bytes)) : Optional.empty();
    }

    private Problem tooLarge(String name, long bytes) {
        return problem(
                "file-too-large",
                name,
                "the file has " + bytes / BYTES_PER_MB + " MB",
                "at most " + maxMb + " MB",
                "cut it down to the area and the columns of the round; a file of this size is probably another one");
    }

    static Problem missing(String name) {
        return problem(
                "file-missing",
                name,
                "the file is not there",
                "the file in the round folder",
                "add it, or name the one that holds it under files in round.json");
    }

    static Problem unreadable(String name) {
        return problem(
                "file-unreadable",
                name,
                "the file cannot be opened",
                "a file that you may read",
                "allow reading it, and close it in other programs");
    }

    private static Problem problem(String code, String name, String found, String expected, String remedy) {
        return Problem.error(code, SourcePlace.file(name), found, expected, remedy);
    }
}
