package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that take a decision table, on the demo's two. Source of what they find: the invented scenario. */
class MethodTableCommandsTest {

    private static final String TROUBLED = CommandRun.demo("ilvermoor-troubled").toString();
    private static final String RECEIVED = TROUBLED + "/method_received.dmn";
    private static final String CORRECTED = CommandRun.demo("ilvermoor") + "/method.dmn";

    @TempDir
    Path temp;

    @Test
    void theAuditOfTheTableAsReceivedPrintsItsFindingsAndEndsWithOne() {
        CommandRun run = CommandRun.of("method", "audit", RECEIVED, "--round", TROUBLED);
        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.out())
                .contains(
                        "5 findings, worst first",
                        "1. ERROR, GAP: No rule matches",
                        "2. ERROR, CONTRADICTION: Rules 5, 6, 7 and 9 each contradict rule 12",
                        "3. ERROR, CONTRADICTION AT A LIMIT: Rules 5, 6 and 7 each contradict rules 9 and 10",
                        "4. WARNING, OVERLAP WITH THE SAME OUTPUT: Rules 8, 10 and 11 each overlap rule 12",
                        "5. WARNING, REDUNDANT RULE: Rule 14 lies inside rule 5 and says the same, EFISH",
                        "BRN-02 (deepest point 0.74 ± 0.08 m): more than one answer");
    }

    @Test
    void theAuditOfTheCorrectedTableEndsWithZeroAndStillPromisesNothing() {
        CommandRun run = CommandRun.of("method", "audit", CORRECTED);
        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.words()).contains("Every case has one answer", "only you can know");
    }

    @Test
    void theAuditAsJsonHoldsEachFindingWithACase() {
        CommandRun run = CommandRun.of("method", "audit", RECEIVED, "--round", TROUBLED, "--json");
        JsonNode findings = run.json().path("result").path("findings");
        assertThat(findings.size()).isEqualTo(5);
        assertThat(findings.path(0).path("example").path("conductivity_us_cm").asText())
                .isEqualTo("7.5");
    }

    @Test
    void anExampleOfTheAuditTriedOutShowsItsFinding() {
        CommandRun run = CommandRun.of(
                "method",
                "try",
                RECEIVED,
                "wet_state=flowing",
                "depth_velocity_m2s=0.45",
                "max_depth_m=0.75",
                "conductivity_us_cm=104",
                "clarity_m=2",
                "water_temp_c=15",
                "night_access=yes");
        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.out()).contains("rules 5 and 12 match at once, with EFISH and TRAP");
    }

    @Test
    void everyFaultInTriedValuesIsSaidAtOnce() {
        CommandRun run = CommandRun.of("method", "try", CORRECTED, "max_depth_m=0,7", "flow=1");
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("max_depth_m=0,7: this is no number", "the table has no input \"flow\"");
    }

    @Test
    void comparingTheTwoTablesNamesTheSitesThatChange() {
        CommandRun run = CommandRun.of("method", "compare", RECEIVED, CORRECTED, "--round", TROUBLED);
        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.out())
                .contains("BRN-03  no rule fits becomes TRAP by rule 10", "HSK-02  no rule fits becomes SPOT by rule 9")
                .doesNotContain("PEL-02  ");
    }

    @Test
    void aTableGoesThroughASpreadsheetAndBackWithoutLosingAByte() throws IOException {
        Path csv = temp.resolve("method.csv");
        Path back = temp.resolve("back.dmn");
        assertThat(CommandRun.of("method", "convert", CORRECTED, "--out", csv.toString())
                        .code())
                .isEqualTo(ExitCode.FINE);
        assertThat(CommandRun.of("method", "audit", csv.toString()).code()).isEqualTo(ExitCode.FINE);
        assertThat(CommandRun.of("method", "convert", csv.toString(), "--out", back.toString(), "--onto", CORRECTED)
                        .code())
                .isEqualTo(ExitCode.FINE);
        assertThat(Files.readAllBytes(back)).isEqualTo(Files.readAllBytes(Path.of(CORRECTED)));
    }

    @Test
    void readingsOnArrivalSayWhatFlipped() {
        CommandRun run = CommandRun.of(
                "method",
                "decide",
                CommandRun.demo("ilvermoor").toString(),
                "--site",
                "BRN-02",
                "--measured",
                "max_depth_m=0.9");
        assertThat(run.out())
                .contains(
                        "Planned:  EFISH by rule 5",
                        "Measured: TRAP by rule 15",
                        "rule 5 fails at deepest point 0.9 m, not in at most 0.8 m");
    }

    @Test
    void aBrokenTableIsNotAuditedButShownWithEveryFault() {
        CommandRun run = CommandRun.of("method", "audit", TROUBLED + "/bad/method.dmn");
        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.err()).contains("[600..15]", "Nothing was audited");
    }

    @Test
    void noWeekIsPlannedOnATableThatFailsSites() throws IOException {
        TempRound round = TempRound.copyOf("ilvermoor", temp.resolve("round"));
        Files.copy(Path.of(RECEIVED), Path.of(round.toString(), "method.dmn"), StandardCopyOption.REPLACE_EXISTING);
        CommandRun run = CommandRun.of("week", "plan", round.toString(), "--iterations", "0");
        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.err()).contains("method-clash", "method-gap", "Nothing was planned or written");
        assertThat(Path.of(round.toString(), "plan.json")).doesNotExist();
    }
}
