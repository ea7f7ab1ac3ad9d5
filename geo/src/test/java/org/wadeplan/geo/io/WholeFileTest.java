package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.problem.DiskException;

class WholeFileTest {

    @TempDir
    Path folder;

    @Test
    void replacesTheFileWhole() throws Exception {
        Path file = folder.resolve("plan.txt");
        WholeFile.write(file, "old");
        WholeFile.write(file, "new \u00fc");

        assertThat(file).hasContent("new \u00fc");
        assertThat(folder.toFile().list()).containsExactly("plan.txt");
    }

    @Test
    void aFailureOnTheWayLeavesTheOldFileAndNothingElse() throws Exception {
        Path file = folder.resolve("plan.txt");
        WholeFile.write(file, "old");

        assertThatThrownBy(() -> WholeFile.write(file, part -> {
                    Files.writeString(part, "half");
                    throw new IOException("no space left");
                }))
                .isInstanceOfSatisfying(DiskException.class, refused -> assertThat(
                                refused.problem().sentence())
                        .isEqualTo(file + ": could not be written (no space left). Allowed: a folder that can be"
                                + " written to. Do: check that the folder is not read-only or full, or name another"));
        assertThat(file).hasContent("old");
        assertThat(folder.toFile().list()).containsExactly("plan.txt");
    }

    @Test
    void aMissingFolderIsNamed() {
        assertThatThrownBy(() -> WholeFile.write(folder.resolve("none").resolve("plan.txt"), "x"))
                .isInstanceOf(DiskException.class)
                .hasMessageContaining("its folder does not exist");
    }
}
