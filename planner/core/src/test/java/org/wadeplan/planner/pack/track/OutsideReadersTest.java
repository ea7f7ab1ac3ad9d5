package org.wadeplan.planner.pack.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.planner.pack.SmallPlan;
import org.wadeplan.planner.pack.SmallRound;
import org.wadeplan.planner.round.Round;

/** Programs that others wrote open what we wrote; skipped, and saying so, where they are not installed. */
class OutsideReadersTest {

    @TempDir
    static Path folder;

    @BeforeAll
    static void write() throws Exception {
        Round round = SmallRound.round(folder);
        TrackFiles files = new TrackFiles(round, SmallPlan.of(round).reaches(), Instant.parse("2027-09-03T16:00:00Z"));
        assertThat(files.writeAll(folder)).isEmpty();
    }

    /** Source: the library that most map programs read GeoPackage with, through its own lister. */
    @Test
    void aMapLibraryFindsTheThreeLayers() throws Exception {
        assertThat(run(
                        "ogrinfo",
                        "-ro",
                        "-q",
                        folder.resolve(TrackFiles.GEOPACKAGE).toString()))
                .contains("reaches (Line String)", "stakes (Point)", "streams (Line String)");
    }

    /** Source: XML 1.0 well-formedness as an independent parser checks it. */
    @Test
    void anXmlParserTakesTheGpx() throws Exception {
        assertThat(run("xmllint", "--noout", folder.resolve(TrackFiles.GPX).toString()))
                .isEmpty();
    }

    private static String run(String program, String... arguments) throws IOException, InterruptedException {
        Path found = Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
                .map(place -> Path.of(place, program))
                .filter(Files::isExecutable)
                .findFirst()
                .orElse(Path.of(""));
        assumeTrue(!found.toString().isEmpty(), program + " is not installed here, so this was not checked");
        List<String> command = new ArrayList<>(List.of(found.toString()));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }
}
