package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the demo round answers, to the letter; {@code -Dupdate.golden=true} rewrites it after a change that is meant. */
class GoldenTest {

    private static final Path ROUND = CommandRun.demo("ilvermoor");

    @ParameterizedTest
    @CsvSource({
        "check ROUND, check.txt",
        "reach lay ROUND --stakes, reach-lay.txt",
        "reach draw ROUND --size 8 --strata catchment, reach-draw.txt",
        "reach search ROUND --best 5 --site OUN-02, reach-search.txt",
        "method decide ROUND, method-decide.txt",
        "effort plan ROUND, effort-plan.txt",
        "decon steps ROUND --table, decon-steps.txt"
    })
    void answersAsBefore(String line, String file) throws IOException {
        CommandRun run = CommandRun.of(line.replace("ROUND", ROUND.toString()).split(" ", -1));
        String said = (run.out() + run.err()).replace(ROUND.toString(), "ROUND").replace("\r\n", "\n");
        Path golden = ROUND.resolve("expected").resolve(file);
        if (Boolean.getBoolean("update.golden")) {
            Files.createDirectories(ROUND.resolve("expected"));
            Files.writeString(golden, said, StandardCharsets.UTF_8);
        }

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(said).isEqualTo(Files.readString(golden, StandardCharsets.UTF_8));
    }
}
