package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written for other programs and for paper, and what happens where it can't be written. */
class PackAndShareTest {

    private static final String ROUND = CommandRun.demo("ilvermoor").toString();

    @TempDir
    Path temp;

    @Test
    void packWritesPagesTracksAndThePlan() throws IOException {
        Path out = temp.resolve("pack");

        CommandRun run = CommandRun.of("pack", ROUND, "--out", out.toString(), "--iterations", "300");

        assertThat(run.code()).isIn(ExitCode.FINE, ExitCode.FINDINGS);
        assertThat(run.words()).contains("written to " + out);
        try (var files = Files.list(out)) {
            assertThat(files.map(file -> String.valueOf(file.getFileName())))
                    .contains("plan.json")
                    .anyMatch(name -> name.endsWith(".pdf"))
                    .anyMatch(name -> name.endsWith(".gpx"))
                    .anyMatch(name -> name.endsWith(".ics"))
                    .anyMatch(name -> name.endsWith(".gpkg"))
                    .anyMatch(name -> name.endsWith(".geojson"))
                    .noneMatch(name -> name.contains("tmp"));
        }
    }

    // How each form begins: GPX 1.1 and RFC 5545 by their texts, GeoPackage as an SQLite file, GeoJSON by RFC 7946.
    @ParameterizedTest
    @CsvSource({"gpx, <?xml", "ics, BEGIN:VCALENDAR", "gpkg, SQLite format 3", "geojson, {"})
    void shareWritesOneFile(String kind, String beginning) throws IOException {
        Path file = temp.resolve("Flüsse 2027." + kind);

        CommandRun run = CommandRun.of("share", kind, ROUND, "--out", file.toString(), "--iterations", "0");

        assertThat(run.words()).contains(file + " written, plan ");
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.UTF_8)).startsWith(beginning);
        assertThat(TempRound.content(temp)).hasSize(1);
    }

    // Root may write to any folder, so a file stands in for a folder that can't be written to.
    @ParameterizedTest
    @ValueSource(strings = {"pack", "share gpx", "share ics", "share gpkg", "share geojson"})
    void anUnwritablePlaceIsSaid(String words) throws IOException {
        Path file = Files.writeString(temp.resolve("taken"), "mine");
        SortedMap<String, String> before = TempRound.content(temp);
        String out =
                words.equals("pack") ? file.toString() : file.resolve("round.x").toString();

        CommandRun run = CommandRun.of((words + " " + ROUND + " --iterations 0 --out " + out).split(" ", -1));
        CommandRun json = CommandRun.of((words + " " + ROUND + " --iterations 0 --json --out " + out).split(" ", -1));

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.words()).contains("taken").contains("Do: ").doesNotContain("Exception");
        assertThat(run.out()).isEmpty();
        assertThat(json.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(json.json().path("problems")).isNotEmpty();
        assertThat(TempRound.content(temp)).isEqualTo(before);
    }

    @Test
    void aPlanThatCannotBeWrittenIsSaid() throws IOException {
        TempRound round = TempRound.copyOf("ilvermoor", temp.resolve("round"));
        Files.createDirectories(round.folder().resolve("plan.json").resolve("inside"));
        SortedMap<String, String> before = round.content();

        CommandRun run = CommandRun.of("week", "plan", round.toString(), "--iterations", "0");

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.words()).contains("plan.json").doesNotContain("Exception");
        assertThat(run.out()).isEmpty();
        assertThat(round.content()).isEqualTo(before);
    }
}
