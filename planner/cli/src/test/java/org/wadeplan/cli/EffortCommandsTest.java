package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an operator reads before setting a unit, and the sums to check against. */
class EffortCommandsTest {

    private static final String ROUND = CommandRun.demo("ilvermoor").toString();

    @Test
    void cautionsStandBeforeEveryVoltage() {
        for (CommandRun run : new CommandRun[] {
            CommandRun.of("effort", "plan", ROUND), CommandRun.of("effort", "plan", ROUND, "--site", "BRN-01")
        }) {
            assertThat(run.code()).isEqualTo(ExitCode.FINE);
            assertThat(run.out().indexOf("Electricity and water kill"))
                    .isPositive()
                    .isLessThan(run.out().indexOf("165"));
            assertThat(run.words())
                    .contains("dvice")
                    .contains("operator decides")
                    .doesNotContain(" safe");
        }
    }

    @Test
    void theSheetOfASiteShowsEverythingThatFollowsFromItsMethod() {
        CommandRun run = CommandRun.of("effort", "plan", ROUND, "--site", "BRN-01");

        assertThat(run.words())
                .contains("p50 265 min, p80 300 min, n 4")
                .contains("J 215/2150")
                .contains("P1 98 %, P2 95 %: 4632 s by their health")
                .contains("Ceiling from 0 µS/cm: 1100 V")
                .contains("same reach, method, settings, effort, season")
                .contains("A blank is never proof of absence");
    }

    /** Demo scenario 4.6: a meter that shows 700 at 25 degrees means 609 in the water, above what the method allows. */
    @Test
    void aReadingOnArrivalIsConvertedAndTheMethodAskedAgain() {
        CommandRun run = arrival("700", "25C", "18.5");

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.words()).contains("With what was measured the table gives TRAP, not EFISH as planned");
    }

    @Test
    void asksForTheBasisOfAReading() {
        CommandRun run = CommandRun.of("effort", "plan", ROUND, "--site", "OUN-03", "--conductivity", "700");

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.words()).contains("nobody said which was read").contains("Allowed: ambient, 25C");
        assertThat(arrival("700", "guess", "18.5").words()).contains("\"guess\" is no basis of a conductivity");
        assertThat(arrival("-7", "25C", "18.5").words()).contains("-7 µS/cm is no conductivity of a stream");
        assertThat(arrival("700", "25C", "99").words()).contains("99 °C is no temperature of a stream");
    }

    private static CommandRun arrival(String conductivity, String basis, String tempC) {
        return CommandRun.of(
                "effort",
                "plan",
                ROUND,
                "--site",
                "OUN-03",
                "--conductivity=" + conductivity,
                "--basis",
                basis,
                "--water-temp",
                tempC);
    }

    @Test
    void aReadingNeedsItsSite() {
        CommandRun run = CommandRun.of("effort", "plan", ROUND, "--water-temp", "12");

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.words()).contains("--site");
        assertThat(CommandRun.of("effort", "plan", ROUND, "--site", "BRN-99").code())
                .isEqualTo(ExitCode.USAGE);
    }

    @Test
    void detectAnswersWithItsCaution() {
        CommandRun run = CommandRun.of("effort", "detect", "--per-unit", "0.3", "--target", "0.9");

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.words())
                .contains("7 units meet it with 90 %")
                .contains("9 blank units leave 5 % or less")
                .contains("only where units are independent");
        assertThat(CommandRun.of("effort", "detect", "--per-unit", "0.3", "--json")
                        .json()
                        .path("result")
                        .path("unitsNeeded")
                        .asInt())
                .isEqualTo(7);
    }

    @ParameterizedTest
    @CsvSource({
        "effort detect --per-unit 0, '--per-unit: 0 is not possible here. Allowed: a number between 0 and 1'",
        "effort detect --per-unit 1.2, '--per-unit: 1.2 is not possible here. Allowed: a number between 0 and 1'",
        "effort detect --per-unit 0.2 --target 1, '--target: 1 is not possible here'",
        "effort sums --mean-w -5 --pack-wh 168, '--mean-w: -5 is not possible here. Allowed: a number above 0'",
        "effort sums --fish 12, 'no sum has all of its numbers'"
    })
    void refusesNumbersThatMeanNothing(String line, String mustSay) {
        CommandRun run = CommandRun.of(line.split(" ", -1));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.words()).contains(mustSay);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void sumsAreCheckFiguresAndSaySo() {
        CommandRun run =
                CommandRun.of(("effort sums --fish 84 --length-m 150 --width-m 4 --shock-s 5000 --per-bucket 50"
                                + " --dose-mg-l 17 --bath-l 10 --stock-mg-ml 540 --mean-w 100 --pack-wh 168")
                        .split(" ", -1));

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.words())
                .contains("14 fish/100 m²")
                .contains("60.48 fish/h")
                .contains("buckets: 2")
                .contains("0.3148 mL")
                .contains("64.512 min")
                .contains("Check figures only, never a recommendation")
                .contains("the product's own label");
    }
}
