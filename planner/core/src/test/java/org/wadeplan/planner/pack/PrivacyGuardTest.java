package org.wadeplan.planner.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;

/** Private cells planted where a page prints them. */
class PrivacyGuardTest {

    private static final Instant MADE_AT = Instant.parse("2027-09-03T16:00:00Z");

    @TempDir
    private Path disk;

    private Path folder;

    @BeforeEach
    void makeTheRoundFolder() throws IOException {
        folder = Files.createDirectories(disk.resolve("round"));
    }

    private PackResult pack() throws DiskException {
        var round = SmallRound.round(folder);
        return PackWriter.write(round, SmallPlan.of(round), disk.resolve("pack"), MADE_AT);
    }

    @Test
    void stopsThePackAndNamesTheCellButNotItsValue() throws Exception {
        // The small plan's consents say "Ring the holder the evening before. Key 4."
        Files.writeString(
                folder.resolve("consents_private.csv"), "consent,holder,phone\nC1,The Evening Before,000-0101\n");
        PackResult result = pack();
        assertThat(result.written()).isFalse();
        assertThat(result.problems())
                .extracting(Problem::code, problem -> problem.place().toString())
                .contains(tuple("private-in-pack", "consents_private.csv, line 2, column holder"));
        assertThat(result.problems())
                .allSatisfy(problem -> assertThat(problem.sentence()).doesNotContainIgnoringCase("evening"));
        try (Stream<Path> files = Files.list(disk.resolve("pack"))) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void writesThePackWhereNothingPrivateIsInIt() throws Exception {
        Files.writeString(
                folder.resolve("consents_private.csv"), "consent;holder;phone\nC1;Quillfeather Estate;0555 0107 221\n");
        assertThat(pack().written()).isTrue();
    }

    @Test
    void writesThePackOfARoundWithoutPrivateTables() throws Exception {
        assertThat(pack().written()).isTrue();
    }

    @Test
    void findsAPhoneAcrossALineBreakButNotInsideALongerNumber() throws Exception {
        Files.writeString(folder.resolve("people_private.csv"), "person,phone\nimre,000-0101\n");
        PrivateCells cells = PrivateCells.of(folder, List.of());
        assertThat(cells.foundIn("a.pdf", "ring 000-\n0101 first")).hasSize(1);
        assertThat(cells.foundIn("a.pdf", "3000-0101 and 000-01012")).isEmpty();
    }

    @Test
    void passesOverShortCellsAndAHolderAfterWhomASiteIsNamed() throws Exception {
        Files.writeString(
                folder.resolve("consents_private.csv"), "consent,holder,phone\nC1,Pim,\nC2,Hesk,\nC3,Wexcroft,\n");
        PrivateCells cells = PrivateCells.of(folder, List.of("Hesk Bog"));
        assertThat(cells.count()).isEqualTo(1);
    }

    @Test
    void refusesWhereAPrivateTableCannotBeRead() throws Exception {
        Files.write(folder.resolve("people_private.csv"), new byte[] {'p', ',', (byte) 0xff, (byte) 0xfe});
        assertThatThrownBy(this::pack).isInstanceOfSatisfying(DiskException.class, refused -> assertThat(
                        refused.problem().sentence())
                .contains("people_private.csv"));
    }
}
