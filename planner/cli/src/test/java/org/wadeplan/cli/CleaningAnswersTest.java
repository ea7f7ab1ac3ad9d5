package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The agreed week of the troubled demo round (Ilvermoor scenario 4.8): its cleaning, and sets that want to leave. */
class CleaningAnswersTest {

    private static final String BATHS = "bath,resource,agent,made_at,volume_l,strength,strength_basis,measured_at,"
            + "measured_strength,lot,discarded_at\n"
            + "B1,oxidiser-tub,oxidiser,2027-09-06T15:40:00Z,60,20,g/L product,2027-09-06T15:50:00Z,21,C1,\n";
    private static final String CLEANINGS = "cleaning,kit_set,treatment,mode,bath,started_at,ended_at,temp_start_c,"
            + "temp_end_c,strength_start,strength_end,picked,rinsed,dry_at,operator,checker,override_by,override_reason,"
            + "note\n";
    private static final String TUESDAY =
            "C1,K4,hot-dip-60,soak,,2027-09-07T18:10:00Z,2027-09-07T18:50:00Z,62,60,,,true,"
                    + "true,2027-09-08T07:20:00Z,thandiwe,beatriz,,,\n";
    private static final String MONDAY =
            "C2,K1,oxidiser-bath,soak,B1,2027-09-06T16:10:00Z,2027-09-06T16:30:00Z,,,21,20,"
                    + "true,true,2027-09-07T04:50:00Z,imre,yusra,,,\n";

    @TempDir
    Path temp;

    private String round = "";

    @BeforeEach
    void copyTheRound() throws IOException {
        Path from = CommandRun.demo("ilvermoor-troubled");
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, temp.resolve(file.getFileName()));
            }
        }
        round = temp.toString();
    }

    private CommandRun release(String kitSet, String water, String at, String cleanings) throws IOException {
        Files.writeString(temp.resolve("baths.csv"), BATHS);
        Files.writeString(temp.resolve("cleanings.csv"), CLEANINGS + cleanings);
        return CommandRun.of("decon", "release", round, "--kit-set", kitSet, "--water", water, "--at", at);
    }

    @Test
    void stepsTellTheWeekByTheClockWithItsBathsAndWhatIsShort() {
        CommandRun run = CommandRun.of("decon", "steps", round);
        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.words())
                .contains(
                        "bath oxidiser tubs, no. 2 of 2: oxidiser 20 g/L product, 1.2 kg made up to 60 L; ready by 16:25"
                                + " (crew A); for T1 16:25-16:45; tip out by Wed 00:00")
                .contains("17:50 K4 from TOL · crew B, 1 of them busy until 19:20 · released Wed 07:20")
                .contains(
                        "5 baths take 6 kg of oxidiser; 4 kg in date, 1 kg out of date: short 2 kg from Wed 8 Sep on.")
                .contains("Without: 4.8 kg, still short 0.8 kg.")
                .contains("[bath-stock-short]");
    }

    @Test
    void stepsOfOneSetShowThatSetAlone() {
        assertThat(CommandRun.of("decon", "steps", round, "--kit-set", "T1").out())
                .contains("T1 from BRN")
                .doesNotContain("K4 from TOL");
    }

    @Test
    void aSetWithAnAcceptedSheetMayLeaveAndNothingIsCalledSafe() throws IOException {
        CommandRun run = release("K4", "PEL", "2027-09-08T08:00:00Z", TUESDAY);
        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.words())
                .contains("May leave by the records: nothing was found against it.")
                .contains("GSA on absorbent items from TOL: cleaning C1, hot-dip-60, grade A");
        assertThat(run.words().toLowerCase(Locale.ROOT)).doesNotContain("safe");
    }

    @Test
    void aSetWithoutOneMayNotAndTheWaysOutAreNamed() throws IOException {
        CommandRun run = release("K4", "PEL", "2027-09-08T08:00:00Z", MONDAY);
        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.words())
                .contains("May not leave by the records.")
                .contains("no accepted cleaning since Tue 7 Sep 17:05 covers GSA on absorbent items from TOL")
                .contains("clean it now: brush 20 min, soak 40 min (60 °C)")
                .contains("Earliest: Wed 8 Sep 21:30")
                .contains("[release-refused]");
    }

    @Test
    void anOverrideIsPrintedAndEndsWithOneAllTheSame() throws IOException {
        String weak =
                TUESDAY.replace(",62,60,", ",62,51,").replace("beatriz,,,", "beatriz,pavel,the tide does not wait,");
        CommandRun run = release("K4", "PEL", "2027-09-08T08:00:00Z", weak);
        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.words())
                .contains("A person let it go all the same; it does not count as clean.")
                .contains(
                        "let go by pavel although cleaning C1 does not clear it: the tide does not wait. It is not clean.");
    }

    @Test
    void theAnswerIsOneDocumentOfDataToo() throws IOException {
        release("K4", "PEL", "2027-09-08T08:00:00Z", TUESDAY);
        CommandRun run = CommandRun.of(
                "decon",
                "release",
                round,
                "--kit-set",
                "K4",
                "--water",
                "PEL",
                "--at",
                "2027-09-08T08:00:00Z",
                "--json");
        assertThat(run.json().at("/result/verdict").asText()).isEqualTo("CLEARED");
        CommandRun steps = CommandRun.of("decon", "steps", round, "--json");
        assertThat(steps.json().at("/result/bench/stock/0/shortBy").asDouble()).isEqualTo(2.0);
        assertThat(steps.json()
                        .at("/result/bench/bench/tasks/0/steps/1/place/number")
                        .asInt())
                .isEqualTo(1);
    }
}
