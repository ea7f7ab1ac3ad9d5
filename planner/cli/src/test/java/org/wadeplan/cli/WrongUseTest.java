package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wrong use: exit code 2, one line of what was wrong, and where to read on. */
class WrongUseTest {

    private static final String ROUND = CommandRun.demo("ilvermoor").toString();

    @TempDir
    Path temp;

    static Stream<Arguments> wrongLines() {
        return Stream.of(
                Arguments.of(List.of("chek"), "'chek' is not a command of wadeplan. Did you mean: check"),
                Arguments.of(
                        List.of("week", "pln", ROUND), "'pln' is not a command of wadeplan week. Did you mean: plan?"),
                Arguments.of(List.of("share", "png", ROUND), "'png' is not a command of wadeplan share"),
                Arguments.of(List.of("check"), "Missing required parameter: 'ROUND'"),
                Arguments.of(List.of("check", ROUND, "more"), "'more' is one argument too many"),
                Arguments.of(List.of("check", ROUND, "--jsn"), "'--jsn' is not an option of wadeplan check"),
                Arguments.of(
                        List.of("check", ROUND, "--at", "yesterday"),
                        "'yesterday' is no instant; write one in UTC like 2027-09-05T18:00:00Z"),
                Arguments.of(
                        List.of("kit", "tick", ROUND, "--crew", "A", "--date", "2027-09-99", "--item", "E1"),
                        "'2027-09-99' is no day of the calendar; write one as year-month-day like 2027-09-06"),
                Arguments.of(
                        List.of("week", "plan", ROUND, "--iterations", "-5"),
                        "'-5' is no search budget; write a whole number from 0"),
                Arguments.of(List.of("week", "plan", ROUND, "--iterations=many"), "'many' is no search budget"),
                Arguments.of(List.of("week", "plan", ROUND, "--seed", "x"), "'x' is no whole number"),
                Arguments.of(List.of("pack", ROUND), "Missing required option: '--out=DIR'"),
                Arguments.of(List.of("demo"), "Missing required parameter: 'DIR'"),
                Arguments.of(
                        List.of("hazard", "brief", ROUND, "--site", "BRN-99"),
                        "this round has no \"BRN-99\". Allowed: BRN-01, BRN-02"),
                Arguments.of(
                        List.of("decon", "steps", ROUND, "--kit-set", "K9"),
                        "this round has no \"K9\". Allowed: K1, K2, K3, K4, K5, T1, T2"),
                Arguments.of(
                        List.of("decon", "release", ROUND, "--kit-set", "K1", "--water", "XYZ"),
                        "this round has no \"XYZ\". Allowed: BRN, HSK, TOL, OUN-U, OUN-L, PEL"),
                Arguments.of(
                        List.of("decon", "release", ROUND, "--water", "BRN"), "Missing required option: '--kit-set=K'"),
                Arguments.of(List.of("window", ROUND), "start the window with planner/bin/wadeplan window ROUND"));
    }

    @ParameterizedTest
    @MethodSource("wrongLines")
    void isSaidInOneLine(List<String> line, String mustSay) {
        CommandRun run = CommandRun.of(line.toArray(String[]::new));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.words()).contains(mustSay).doesNotContain("Exception");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void isOneDocumentWhereJsonWasAskedFor() {
        CommandRun run = CommandRun.of("week", "plan", ROUND, "--json", "--iterations", "-5");

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).isEmpty();
        assertThat(run.json().path("command").asText()).isEqualTo("wadeplan week plan");
        assertThat(run.json().path("problems").path(0).path("code").asText()).isEqualTo("wrong-use");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "reach", "method", "kit", "decon", "week", "hazard", "share"})
    void halfACommandShowsItsHelp(String words) {
        CommandRun run = words.isEmpty() ? CommandRun.of() : CommandRun.of(words);

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err())
                .contains("Usage: " + ("wadeplan " + words).strip())
                .contains("Commands:");
    }

    @Test
    void helpAndVersionAreNoWrongUse() {
        assertThat(CommandRun.of("--help").out()).contains("Exit codes:").contains("Start here:");
        assertThat(CommandRun.of("help", "week").out()).contains("Usage: wadeplan week");
        assertThat(CommandRun.of("week", "plan", "--help")).satisfies(help -> {
            assertThat(help.code()).isEqualTo(ExitCode.FINE);
            assertThat(help.out()).contains("--iterations").contains("plan.json.bak");
        });
        assertThat(CommandRun.of("--version").out()).startsWith("wadeplan ");
    }
}
