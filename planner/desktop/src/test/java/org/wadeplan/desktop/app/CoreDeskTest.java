package org.wadeplan.desktop.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.desktop.session.DaySky;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.OpenedRound;
import org.wadeplan.desktop.session.WrittenPack;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.work.WorkProgress;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;

/** The real planner behind the window, from folder to pack. */
class CoreDeskTest {

    private final CoreDesk desk = new CoreDesk(Clock.fixed(Instant.parse("2027-09-03T15:00:00Z"), ZoneOffset.UTC));
    private final List<String> steps = new ArrayList<>();

    @TempDir
    Path temporary = Path.of(".");

    private final WorkProgress progress = new WorkProgress() {
        @Override
        public void at(String step, double share) {
            steps.add(step);
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    private static List<String> listing(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(file -> file + " " + file.toFile().length() + " "
                            + file.toFile().lastModified())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void theDemoIsPlannedAndPrintedAndItsFolderStaysAsItWas() throws IOException, DiskException {
        List<String> before = listing(InventedWeek.FOLDER);
        OpenedRound opened = desk.open(InventedWeek.FOLDER, Set.of(), progress);
        assertThat(opened.plan()).isPresent();
        assertThat(opened.plan().orElseThrow().week().crewDays()).isNotEmpty();
        assertThat(steps).startsWith("files").contains("reaches").endsWith("check");
        WrittenPack pack = desk.print(
                opened.round().orElseThrow(), opened.plan().orElseThrow(), temporary.resolve("pack"), progress);
        assertThat(pack.pages()).isGreaterThan(20);
        assertThat(pack.files())
                .allSatisfy(file -> assertThat(temporary.resolve("pack").resolve(file.name()))
                        .isRegularFile());
        assertThat(listing(InventedWeek.FOLDER)).isEqualTo(before);
    }

    @Test
    void sunAndTideComeFromThePlanner() {
        DaySky friday = Skies.of(InventedWeek.round()).get(4);
        assertThat(friday.date()).isEqualTo(InventedWeek.MONDAY.plusDays(4));
        // Sunset 19:44 here, dark 45 minutes later; low water from the round's own table.
        assertThat(Times.clock(friday.sunset().orElseThrow(), InventedWeek.ZONE))
                .startsWith("19:4");
        assertThat(friday.darkFrom().orElseThrow())
                .isEqualTo(friday.sunset().orElseThrow().plusSeconds(45 * 60));
        assertThat(friday.lowWaters())
                .extracting(window -> Times.clock(window.low(), InventedWeek.ZONE))
                .contains("07:15", "19:40");
    }

    @Test
    void aFolderThatIsNoRoundHasAProblemAndNoPlan() {
        OpenedRound opened = desk.open(temporary, Set.of(), progress);
        assertThat(opened.round()).isEmpty();
        assertThat(opened.plan()).isEmpty();
        assertThat(opened.problems()).extracting(Problem::sentence).anyMatch(said -> said.contains("round.json"));
    }

    @Test
    void aFolderThatCannotBeWrittenToIsSaidSo() throws IOException {
        Path file = Files.writeString(temporary.resolve("taken"), "a file");
        OpenedRound opened = InventedWeek.opened();
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() ->
                        desk.print(opened.round().orElseThrow(), opened.plan().orElseThrow(), file, progress)))
                .isInstanceOf(DiskException.class);
    }

    @Test
    void theDemoIsFoundBesideTheProgram() {
        assertThat(desk.demo()).contains(InventedWeek.FOLDER);
    }
}
