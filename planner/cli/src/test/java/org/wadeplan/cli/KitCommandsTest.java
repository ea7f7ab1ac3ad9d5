package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is short, and what may be loaded, from the command line; the Ilvermoor scenario, sections 4.6 to 4.9. */
class KitCommandsTest {

    @TempDir
    Path temp;

    private TempRound troubled() {
        return TempRound.copyOf("ilvermoor-troubled", temp.resolve("round"));
    }

    private static CommandRun tick(TempRound round, String item, String at, String... more) {
        String[] first = {
            "kit", "tick", round.toString(), "--crew", "A", "--date", "2027-09-10", "--item", item, "--at", at
        };
        String[] all = new String[first.length + more.length];
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return CommandRun.of(all);
    }

    @Test
    void listsWhatIsShortInTheAgreedWeekFirst() {
        CommandRun run = CommandRun.of(
                "kit", "list", CommandRun.demo("ilvermoor-troubled").toString());

        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.out().lines().skip(2).limit(9))
                .containsExactly(
                        "Short",
                        "kind                days                     need    have   short by",
                        "conductivity meter  Mon, Tue, Wed, Thu, Fri  2       1      1",
                        "densiometer         Mon, Tue, Wed            2       1      1",
                        "spotlight           Mon, Fri                 2       1      1",
                        "backpack unit       Wed                      2       1      1",
                        "fyke                Wed                      6       5      1",
                        "oxidiser            Wed, Thu                 6 kg    4 kg   2 kg",
                        "anaesthetic         Thu, Fri                 110 mL  90 mL  20 mL");
        assertThat(run.words())
                .contains("the week as agreed")
                .contains("way out (workshop): have the service of E1 renewed")
                .contains("not a way out: crew A starts at 15:05 on Wed 8 Sep with E2")
                .contains("Vehicle of crew B on Fri 10 Sep")
                .contains("note: pole net: enough, 2 in service, no spare on Mon, Tue, Wed: N2 is out of service (frame"
                        + " cracked)")
                .contains("Crew A, 2027-09-06")
                .contains("oxidiser 4 kg Mon 1.2, Tue 2.4, Wed 0.4 (1.2), Thu 0 (1.2)")
                .contains("L2 spotlight 2 out of service lamp fails at 40 min");
    }

    @Test
    void ticksWhatIsCleanAndShowsItInTheList() throws IOException {
        TempRound round = troubled();

        CommandRun run = tick(round, "K1", "2027-09-10T07:20:00Z", "--by", "Imre");

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.out()).contains("In: K1, crew A, 2027-09-10, ticked by Imre.");
        assertThat(Files.readString(round.folder().resolve("load_ticks.csv")))
                .endsWith("2027-09-10,A,K1,2027-09-10T07:20:00Z,Imre,,\n");
        assertThat(CommandRun.of("kit", "list", round.toString()).words()).contains("[x] kit set kit set K1, wading");
    }

    @Test
    void refusesWhatIsStillDryingAndWritesNothing() {
        TempRound round = troubled();
        var before = round.content();

        CommandRun run = tick(round, "K1", "2027-09-09T20:00:00Z");

        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.words())
                .contains("Not ticked: K1 stays out.")
                .contains("needs --override-by NAME and --reason TEXT")
                .contains("K1 is drying")
                .contains("[tick-refused]");
        assertThat(round.content()).isEqualTo(before);
    }

    @Test
    void anOverrideNeedsANameAndAReasonAndIsShown() {
        TempRound round = troubled();

        CommandRun half = tick(round, "K1", "2027-09-09T20:00:00Z", "--override-by", "Thandiwe");
        assertThat(half.code()).isEqualTo(ExitCode.USAGE);
        assertThat(half.err()).contains("half an override: a name without a reason");
        CommandRun whole = tick(
                round, "K1", "2027-09-09T20:00:00Z", "--override-by", "Thandiwe", "--reason", "dry by hand, looked at");
        assertThat(whole.code()).isEqualTo(ExitCode.FINE);
        assertThat(CommandRun.of("kit", "list", round.toString()).words())
                .contains("let go: K1 by Thandiwe: dry by hand, looked at");
    }

    @Test
    void takesATickBack() throws IOException {
        TempRound round = troubled();
        tick(round, "K1", "2027-09-10T07:20:00Z");

        assertThat(tick(round, "K1", "2027-09-10T07:21:00Z", "--untick").out()).contains("Out again: K1");
        assertThat(Files.readString(round.folder().resolve("load_ticks.csv")).lines())
                .hasSize(1);
        CommandRun again = tick(round, "K1", "2027-09-10T07:21:00Z", "--untick");
        assertThat(again.code()).isEqualTo(ExitCode.USAGE);
        assertThat(again.err()).contains("K1 is not ticked for crew A on 2027-09-10");
    }

    @Test
    void saysWhatTheListHasInstead() {
        CommandRun run = tick(troubled(), "N2", "2027-09-10T07:20:00Z");

        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.words())
                .contains("N2 is not on the load list of crew A for 2027-09-10")
                .contains("the list has pole net N1, N3")
                .contains("N2 is out of service (frame cracked)");
    }
}
