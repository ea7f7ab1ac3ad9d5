package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs a general map program to compare with; tests that need it are skipped where it is not installed. */
final class OtherPrograms {

    private OtherPrograms() {}

    static void needed(String program) {
        boolean there = List.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator)).stream()
                .anyMatch(folder -> !folder.isEmpty() && Files.isExecutable(Path.of(folder, program)));
        assumeTrue(there, "skipped: " + program + " of Debian's gdal-bin is not installed");
    }

    /** What it prints; it must end well. */
    static String run(String... command) throws IOException, InterruptedException {
        Path printed = Files.createTempFile("printed", ".txt");
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(printed.toFile())
                    .start();
            assertThat(process.waitFor(60, TimeUnit.SECONDS))
                    .as("ended in time")
                    .isTrue();
            String words = Files.readString(printed, StandardCharsets.UTF_8);
            assertThat(process.exitValue()).as(words).isZero();
            return words;
        } finally {
            Files.deleteIfExists(printed);
        }
    }
}
