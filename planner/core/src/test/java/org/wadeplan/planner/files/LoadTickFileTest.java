package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.planner.round.LoadTick;

/** Ticks go into the file and come out again, and nothing else changes. */
class LoadTickFileTest {

    private static final String HEADER = "date,crew,item,ticked_at,by,override_by,override_reason\n";

    @TempDir
    Path temp;

    private static LoadTick tick(String item, String reason) {
        return new LoadTick(
                LocalDate.of(2027, 9, 6),
                "A",
                item,
                Instant.parse("2027-09-06T07:20:00Z"),
                "Imre",
                reason.isEmpty() ? Optional.empty() : Optional.of("Thandiwe"),
                reason.isEmpty() ? Optional.empty() : Optional.of(reason));
    }

    private String text() throws IOException {
        return Files.readString(temp.resolve("load_ticks.csv"));
    }

    @Test
    void makesTheFileWithItsHeader() throws IOException, DiskException {
        LoadTickFile.add(temp, tick("K1", ""));
        assertThat(text()).isEqualTo(HEADER + "2027-09-06,A,K1,2027-09-06T07:20:00Z,Imre,,\n");
    }

    @Test
    void keepsRowsOrderAndColumnsOfItsOwn() throws IOException, DiskException {
        Files.writeString(
                temp.resolve("load_ticks.csv"),
                "item;crew;date;ticked_at;by;weather\nE2;B;2027-09-07;2027-09-07T10:00:00Z;Dagny;\"dry; cold\"\n");
        LoadTickFile.add(temp, tick("K1", "dry by hand; \"looked\""));
        assertThat(text())
                .isEqualTo("item;crew;date;ticked_at;by;weather;override_by;override_reason\n"
                        + "E2;B;2027-09-07;2027-09-07T10:00:00Z;Dagny;\"dry; cold\";;\n"
                        + "K1;A;2027-09-06;2027-09-06T07:20:00Z;Imre;;Thandiwe;\"dry by hand; \"\"looked\"\"\"\n");
    }

    @Test
    void takesOneTickBackAndLeavesTheOthers() throws IOException, DiskException {
        LoadTickFile.add(temp, tick("K1", ""));
        LoadTickFile.add(temp, tick("E2", ""));
        LoadTickFile.add(temp, tick("M1", ""));
        LoadTickFile.remove(temp, tick("E2", ""));
        assertThat(text())
                .isEqualTo(HEADER + "2027-09-06,A,K1,2027-09-06T07:20:00Z,Imre,,\n"
                        + "2027-09-06,A,M1,2027-09-06T07:20:00Z,Imre,,\n");
    }

    @Test
    void writesWhatItsOwnReaderTakes() throws IOException, DiskException {
        BrokenRound round = BrokenRound.in(temp);
        LoadTickFile.add(temp, tick("K1", "first line\nsecond\u0007 line, \"quoted\""));
        assertThat(round.read().value().orElseThrow().log().ticks())
                .containsExactly(tick("K1", "first line second line, \"quoted\""));
    }

    @Test
    void losesNoTickOfSeveralAtOnce() throws IOException, DiskException {
        List<DiskException> failed = new ArrayList<>();
        IntStream.range(0, 40).parallel().forEach(number -> {
            try {
                LoadTickFile.add(temp, tick("X" + number, ""));
            } catch (DiskException fault) {
                synchronized (failed) {
                    failed.add(fault);
                }
            }
        });
        assertThat(failed).isEmpty();
        assertThat(text().lines()).hasSize(41).doesNotHaveDuplicates();
    }

    @Test
    void leavesAFileThatItCannotReadAlone() throws IOException {
        String broken = HEADER + "2027-09-06,A,\"K1,2027-09-06T07:20:00Z,Imre,,\n";
        Files.writeString(temp.resolve("load_ticks.csv"), broken);
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> LoadTickFile.add(temp, tick("E2", "")))
                .isInstanceOf(DiskException.class)
                .hasMessageContaining("nothing was written");
        assertThat(text()).isEqualTo(broken);
    }

    @Test
    void leavesNothingElseInTheFolder() throws IOException, DiskException {
        LoadTickFile.add(temp, tick("K1", ""));
        try (var files = Files.list(temp)) {
            assertThat(files.map(file -> String.valueOf(file.getFileName()))).containsExactly("load_ticks.csv");
        }
    }
}
