package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a leader reads who looks for other reaches on the demo round. */
class ReachSearchTest {

    private static final String ROUND = CommandRun.demo("ilvermoor").toString();

    @TempDir
    Path temp;

    @Test
    void proposesReachesAndSaysWhereTheRestOfTheLengthWent() {
        CommandRun run = CommandRun.of("reach", "search", ROUND, "--best", "4");

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.words())
                .contains("rank name stream from_mouth_m east_m north_m score why and where")
                .contains("C01", "C04")
                .doesNotContain("C05")
                .contains("on land without consent")
                .contains("in a straight line:")
                .contains("along the stream:")
                .contains("Nothing here says that a place is safe");
    }

    @Test
    void forASiteItSaysWhatIsInTheWayAndHowFarToMoveWhichWay() {
        CommandRun run = CommandRun.of("reach", "search", ROUND, "--site", "OUN-02");

        assertThat(run.words())
                .contains("in the way: on the parcel L-OUN-02, consent refused, only land with consent")
                .containsPattern("-> move the start \\d+ m upstream: leaves the parcel L-OUN-02")
                .containsPattern("-> move the start \\d+ m downstream");
    }

    @Test
    void noCandidateIsAnAnswerWithReasonsAndItsOwnExitCode() {
        CommandRun run = CommandRun.of("reach", "search", ROUND, "--stream", "PEL");

        assertThat(run.code()).isEqualTo(ExitCode.NO_FEASIBLE_PLAN);
        assertThat(run.words()).contains("No candidate").contains("11.05 11.05 in tidal water");
    }

    @Test
    void everyRejectedStretchIsListedWithEveryReasonWhereAsked() {
        CommandRun run = CommandRun.of("reach", "search", ROUND, "--stream", "HSK", "--rejected");

        assertThat(run.words()).contains("0 m from the culvert HSK-CULVERT, at least 50 m along the stream");
    }

    @Test
    void writesForMapsAndHandhelds() {
        Path out = temp.resolve("found");
        CommandRun run = CommandRun.of("reach", "search", ROUND, "--best", "2", "--out", out.toString());

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(out.resolve("candidates.gpkg")).exists();
        assertThat(out.resolve("candidates.geojson")).exists();
        assertThat(out.resolve("candidates.gpx")).exists();
    }

    @Test
    void afterAFileOfThatNameNothingIsWritten() throws java.io.IOException {
        Path file = Files.writeString(temp.resolve("file"), "mine");
        CommandRun run = CommandRun.of("reach", "search", ROUND, "--out", file.toString());

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(file).hasContent("mine");
    }

    @Test
    void unknownNamesAreRefusedWithThoseThatThereAre() {
        CommandRun site = CommandRun.of("reach", "search", ROUND, "--site", "OUN-99");
        CommandRun stream = CommandRun.of("reach", "search", ROUND, "--stream", "XYZ");
        CommandRun way = CommandRun.of("reach", "search", ROUND, "--clear-by", "crow");

        assertThat(site.code()).isEqualTo(ExitCode.USAGE);
        assertThat(site.err()).contains("OUN-99").contains("OUN-02B");
        assertThat(stream.err()).contains("XYZ").contains("BRN, HSK, OUN, PEL, TOL");
        assertThat(way.code()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void theWayOfMeasuringCanBeChosenForOneRun() {
        assertThat(CommandRun.of("reach", "search", ROUND, "--clear-by", "straight")
                        .out())
                .contains("Distances kept in a straight line");
    }

    @Test
    void jsonHoldsTheWholeReport() {
        String json = CommandRun.of("reach", "search", ROUND, "--best", "1", "--json", "--rejected")
                .out();

        assertThat(json)
                .contains(
                        "\"candidates\"",
                        "\"stakes\"",
                        "\"rejected\"",
                        "\"tally\"",
                        "\"clearReaches\"",
                        "\"layout\" : \"fitted\"");
    }
}
