package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The exposure ledger and the trace of a find, as a leader types them. */
class ExposureCommandsTest {

    private static final String TROUBLED = CommandRun.demo("ilvermoor-troubled").toString();

    private static CommandRun trace(String... further) {
        String[] words = new String[further.length + 3];
        words[0] = "decon";
        words[1] = "trace";
        words[2] = TROUBLED;
        System.arraycopy(further, 0, words, 3, further.length);
        return CommandRun.of(words);
    }

    @Test
    void theLedgerShowsTheLanesOfTheAgreedWeek() {
        CommandRun run = CommandRun.of("decon", "exposure", TROUBLED);

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.out())
                .contains("by the week as agreed (agreed_week.csv, 29 lines)")
                .containsPattern("K4 +Tue 07 19:20 +Wed 08 07:20 +drying")
                .containsPattern("N1 +pole net 1 +1 +HSK Mon 06 13:05, TOL Tue 07 11:55 >");
    }

    @Test
    void atAMomentItSaysWhereOneSetMayGo() {
        CommandRun run =
                CommandRun.of("decon", "exposure", TROUBLED, "--kit-set", "K4", "--at", "2027-09-08T06:00:00Z");

        assertThat(run.out())
                .containsPattern(
                        "K4 +drying +Tue 07 19:20 +TOL +Tue 07 11:05 +[A-Z][a-z]{2} \\d\\d \\d\\d:\\d\\d +Wed 08 07:20 +nowhere yet");
    }

    @Test
    void anUnknownKitSetIsNamed() {
        CommandRun run = CommandRun.of("decon", "exposure", TROUBLED, "--kit-set", "K9");

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.words()).contains("has no \"K9\"", "K1, K2, K3, K4");
    }

    @Test
    void theTraceNamesK4TheLegsAndWhyHskIsClear() {
        CommandRun run = trace("--water", "TOL", "--pest", "LTW", "--seen", "2027-09-07T17:20");

        assertThat(run.words())
                .contains("K4: before the sighting TOL-02 dry-check")
                .contains("K4, crew B, Tue 7 Sep 17:50: 90 -> 105 min")
                .contains("K2, crew B, Wed 8 Sep 13:35: 90 -> 105 min")
                .contains("HSK (Hesk) is clear as far as kit sets go, because:")
                .contains("so it did not come from HSK with K4");
        assertThat(run.code()).isEqualTo(ExitCode.FINE);
    }

    @Test
    void theEventFileSaysTheSame() {
        String event = CommandRun.demo("ilvermoor-troubled")
                .resolve("events")
                .resolve("09-lattice-weed-at-tol-01.json")
                .toString();

        assertThat(trace("--event", event).words())
                .contains("fragments on a pole net", "K4, crew B, Tue 7 Sep 17:50: 90 -> 105 min");
    }

    @Test
    void everythingThatIsWrongIsSaidAtOnce() {
        CommandRun run = trace("--water", "TLO", "--seen", "7.9.2027");

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.words()).contains("find-unknown-water", "find-incomplete", "find-time-unreadable");
    }

    @Test
    void anEventAndOptionsTogetherAreWrongUse() {
        CommandRun run = trace("--event", "x.json", "--water", "TOL");

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.words()).contains("--water", "given together with --event");
    }

    @Test
    void aBrokenEventFileIsInvalidInput() {
        CommandRun run = trace("--event", "missing.json");

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.words()).contains("event-unreadable");
    }
}
