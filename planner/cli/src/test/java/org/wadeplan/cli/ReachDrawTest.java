package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReachDrawTest {

    private static final String ROUND = CommandRun.demo("ilvermoor").toString();

    @TempDir
    Path temp;

    private static CommandRun draw(String... more) {
        List<String> arguments = new ArrayList<>(List.of("reach", "draw", ROUND));
        arguments.addAll(List.of(more));
        return CommandRun.of(arguments.toArray(String[]::new));
    }

    @Test
    void aReserveStandsInWhereAPlaceIsLost() {
        JsonNode result = draw("--size", "6", "--lost", "D002=denied:refused by letter", "--json")
                .json()
                .path("result");

        assertThat(result.path("places").path(1).path("use").asText()).isEqualTo("lost");
        assertThat(result.path("places").path(1).path("lossReason").asText()).isEqualTo("refused by letter");
        assertThat(result.path("places").path(6).path("standsInFor").asText()).isEqualTo("D002");
        assertThat(result.path("visits").path(0).path("visited").asInt()).isEqualTo(6);
    }

    @Test
    void givenNumbersAreDrawnFromTheirStrata() {
        JsonNode strata = draw(
                        "--size", "9", "--strata", "catchment", "--allocation", "BRN=1,HSK=1,OUN=1,TOL=6", "--json")
                .json()
                .path("result")
                .path("strata");

        assertThat(strata.path(3).path("stratum").asText()).isEqualTo("TOL");
        assertThat(strata.path(3).path("size").asInt()).isEqualTo(6);
    }

    @Test
    void everythingThatIsWrongIsSaidAtOnceAndNothingIsWritten() {
        CommandRun run = draw(
                "--size",
                "5000",
                "--reserve",
                "10",
                "--strata",
                "catchment",
                "--allocation",
                "BRN=3,XYZ=1",
                "--out",
                temp.resolve("out").toString());

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.words())
                .contains("draw-reserve", "draw-stratum-unknown", "draw-stratum-without-units", "draw-allocation-sum");
        assertThat(run.out()).isEmpty();
        assertThat(TempRound.content(temp)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--lost|D001=sick|dry, non-target, denied, no-reach",
                "--strata|colour|NONE, ORDER, CATCHMENT, WATER",
                "--allocation|some|'some' is no allocation",
                "--allocation|1=2,1=3|each stratum once",
                "--size|many|many"
            })
    void wrongWordsAreRefusedWithTheRightOnes(String option, String value, String said) {
        CommandRun run = option.equals("--size") ? draw(option, value) : draw("--size", "5", option, value);

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.words()).contains(said);
    }

    @Test
    void aSizeMustBeGiven() {
        assertThat(draw().code()).isEqualTo(ExitCode.USAGE);
        assertThat(draw().words()).contains("--size");
    }
}
