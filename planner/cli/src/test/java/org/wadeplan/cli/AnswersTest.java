package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a leader reads on the demo rounds, in every language of the machine. */
class AnswersTest {

    private static final String ROUND = CommandRun.demo("ilvermoor").toString();
    private static final String TROUBLED = CommandRun.demo("ilvermoor-troubled").toString();

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ilvermoor", "ilvermoor-troubled"})
    void everyStepBeforeTheWeekAnswersOnBothRounds(String name) {
        String round = CommandRun.demo(name).toString();
        assertThat(CommandRun.of("check", round)).satisfies(run -> {
            assertThat(run.code()).isEqualTo(ExitCode.FINE);
            assertThat(run.out()).contains("14 sites, 14 reaches laid").contains("Next: wadeplan week plan");
        });
        assertThat(CommandRun.of("reach", "lay", round).out())
                .contains("WGS 84 / UTM zone 27N (EPSG:32627)")
                .contains("14 reaches of 150 m");
        assertThat(CommandRun.of("method", "decide", round).out())
                .contains("EFISH_AM Electric fishing, done by 13:00")
                .containsPattern("BRN-03 +10 +TRAP ")
                .doesNotContain(" any;");
        assertThat(CommandRun.of("decon", "steps", round, "--table", "--kit-set", "K1")
                        .out())
                .containsPattern("K1 +TOL +BRN +90 ")
                .contains("GSA grey-slick alga")
                .doesNotContain("K2 ");
    }

    @Test
    void theTroubledWeekIsNotFeasibleAndSaysWhy() {
        CommandRun run = CommandRun.of("week", "plan", TROUBLED, "--no-write", "--iterations", "300");

        assertThat(run.code()).isEqualTo(ExitCode.NO_FEASIBLE_PLAN);
        assertThat(run.words()).contains("Not visited: ").contains("Consent C-OUN-02 for OUN-02 was refused");
    }

    @Test
    void hazardBriefReadsAloudWhatCanHurtPeopleAtASite() {
        CommandRun run = CommandRun.of("hazard", "brief", ROUND, "--site", "BRN-01", "--iterations", "0");

        assertThat(run.words())
                .contains("== BRN-01 survey")
                .contains("Electric shock")
                .contains("Emergency number: 112");
        assertThat(run.out()).doesNotContain("== BRN-02");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR"})
    void saysTheSameInEveryLocale(String language) {
        List<CommandRun> english = inLocale(Locale.ENGLISH);

        List<CommandRun> other = inLocale(Locale.forLanguageTag(language));
        for (int i = 0; i < english.size(); i++) {
            assertThat(other.get(i)).isEqualTo(english.get(i));
        }
    }

    private static List<CommandRun> inLocale(Locale locale) {
        Locale.setDefault(locale);
        return Stream.of(
                        "check " + ROUND,
                        "reach lay --stakes " + ROUND,
                        "method decide " + ROUND,
                        "effort plan " + ROUND,
                        "effort plan --json --site BRN-01 " + ROUND,
                        "decon steps --json --table " + ROUND,
                        "week plan --no-write --iterations 20 " + ROUND,
                        "kit list --iterations 20 " + TROUBLED,
                        "hazard brief --iterations 0 " + ROUND,
                        "week --help",
                        "week pln",
                        "week plan --iterations -5 " + ROUND)
                .map(line -> CommandRun.of(line.split(" ", -1)))
                .toList();
    }
}
