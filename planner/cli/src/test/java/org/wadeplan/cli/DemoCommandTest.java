package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The copy of the demo round that a newcomer starts from. */
class DemoCommandTest {

    @TempDir
    Path temp;

    @Test
    void copiesARoundThatChecks() {
        Path mine = temp.resolve("my-round");

        CommandRun run = CommandRun.of("demo", mine.toString());

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.words()).contains("invented demo round").contains("Next: wadeplan check " + mine);
        assertThat(mine.resolve("round.json")).exists();
        assertThat(mine.resolve("expected")).doesNotExist();
        assertThat(CommandRun.of("check", mine.toString()).code()).isEqualTo(ExitCode.FINE);
    }

    @Test
    void copiesTheTroubledOneWithoutItsPlantedFiles() {
        Path mine = temp.resolve("troubled");

        assertThat(CommandRun.of("demo", "--troubled", mine.toString()).code()).isEqualTo(ExitCode.FINE);

        assertThat(mine.resolve("bad")).doesNotExist();
        assertThat(mine.resolve("round.json")).exists();
    }

    @Test
    void refusesAFolderThatHoldsSomething() throws IOException {
        Files.writeString(temp.resolve("notes.txt"), "mine");
        SortedMap<String, String> before = TempRound.content(temp);

        CommandRun run = CommandRun.of("demo", temp.toString());

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.words()).contains("the folder is not empty");
        assertThat(TempRound.content(temp)).isEqualTo(before);
    }

    @Test
    void refusesAFile() throws IOException {
        Path file = Files.writeString(temp.resolve("notes.txt"), "mine");

        CommandRun run = CommandRun.of("demo", file.toString());

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.words()).contains("that is a file, not a folder");
        assertThat(file).hasContent("mine");
    }
}
