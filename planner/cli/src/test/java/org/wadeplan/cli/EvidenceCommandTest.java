package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The evidence as it counts for a round, as a leader asks for it. */
class EvidenceCommandTest {

    private static final Path DEMO = CommandRun.demo("ilvermoor");

    @TempDir
    Path temp;

    @Test
    void showsEachRowWithItsGradeModeAndSourceAndWhatBlocks() {
        CommandRun run = CommandRun.of("decon", "evidence", DEMO.toString(), "--pest", "CSN", "--kit-set", "K1");

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.out())
                .containsPattern(
                        "CSN +hard +oxidiser-bath \\(soak\\) +oxidiser, 20 g/L product +20 +0 +A +yes +\\[1\\]")
                .containsPattern(
                        "CSN +hard +oxidiser-spray \\(spray\\) +oxidiser, 20 g/L product +20 +0 +X +BLOCKS +\\[1\\]")
                .containsPattern("K1 +wader +absorbent +wader +may be immersed, bears 65 °C, bears frost")
                .contains("Rules in force:", "round.json names no jurisdiction")
                .doesNotContain("felt", "GSA");
    }

    @Test
    void anUnknownPestIsNamedWithTheKnownOnes() {
        CommandRun run = CommandRun.of("decon", "evidence", DEMO.toString(), "--pest", "CNS");

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.words()).contains("has no \"CNS\"", "GSA, CSN, LTW, SPB, ANY");
    }

    /** Without a table of its own a round of real pests stands on the evidence that comes with the program. */
    @Test
    void aRoundWithoutATableUsesTheShippedEvidenceOfItsPlace() throws IOException {
        Path round = temp.resolve("round");
        CommandRun.of("demo", round.toString());
        Files.delete(round.resolve("treatments.csv"));
        Files.delete(round.resolve("gear_classes.csv"));
        Files.writeString(
                round.resolve("pests.csv"),
                "pest,name,severity,note\ndidymosphenia-geminata,didymo,4,\npotamopyrgus-antipodarum,mud snail,4,\n");
        Files.writeString(
                round.resolve("water_pests.csv"),
                "water,pest,status,as_of,source\nTOL,didymosphenia-geminata,known,2026-09-12,demo\n");
        Files.writeString(
                round.resolve("round.json"),
                Files.readString(round.resolve("round.json"))
                        .replaceFirst("\"crs\"", "\"jurisdiction\": \"NZ\",\n  \"crs\""));
        String store = Files.readString(round.resolve("store.csv"));
        Files.writeString(round.resolve("store.csv"), store.replaceAll("(?m),[a-z-]*$", ","));
        String steps = Files.readString(round.resolve("decon_steps.csv"));
        Files.writeString(round.resolve("decon_steps.csv"), steps.replace("hot-dip-50", "hot-50"));

        CommandRun run = CommandRun.of("decon", "evidence", round.toString(), "--kit-set", "K1");

        assertThat(run.code()).as(run.out() + run.words()).isEqualTo(ExitCode.FINE);
        assertThat(run.words())
                .contains("superseded on 2021-10-01")
                .contains("rule nz-controlled-area (NZ)")
                .contains(
                        "rule nz-detergent-10 (NZ, in force since 2021-10-01): Dishwashing detergent 10 % for 10 min.")
                .contains("Stockton & Moffitt 2013");
        assertThat(run.out()).contains("detergent-10pc (soak)").contains("10 % v/v product");

        CommandRun stepsRun = CommandRun.of("decon", "steps", round.toString(), "--table", "--kit-set", "K1");
        assertThat(stepsRun.words()).contains("Against didymosphenia-geminata (known at TOL)");
    }
}
