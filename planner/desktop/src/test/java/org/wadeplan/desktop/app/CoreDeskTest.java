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
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.desktop.session.DaySky;
import org.wadeplan.desktop.session.FindReport;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.OpenedRound;
import org.wadeplan.desktop.session.SeenPest;
import org.wadeplan.desktop.session.WeekInForce;
import org.wadeplan.desktop.session.WrittenPack;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.work.WorkProgress;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.files.RoundReader;
import org.wadeplan.planner.kit.TickOutcome;
import org.wadeplan.planner.kit.TickRequest;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Progress;

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

    private static final Path TROUBLED = InventedWeek.FOLDER.resolveSibling("ilvermoor-troubled");

    private static Round troubled(Path folder) {
        return RoundReader.read(folder, Set.of()).value().orElseThrow();
    }

    private static WeekInForce agreed(Round round) {
        return new WeekInForce(RoundPlanner.inForce(round, PlanOptions.usual(), Progress.NONE), true);
    }

    private static List<String> lines(FindReport report, String head) {
        return report.sections().stream()
                .filter(section -> section.head().equals(head))
                .flatMap(section -> section.lines().stream())
                .toList();
    }

    /** The scenario's own account of the find: K4 was there, K2 goes there, nothing came from or went to the Hesk. */
    @Test
    void aFindNamesTheSetThatWasThereTheCleaningsThatChangeAndWhyTheHeskIsClear() {
        Round round = troubled(TROUBLED);
        SeenPest weed = new SeenPest("TOL", "LTW", InventedWeek.at(1, "17:20"));
        FindReport report = desk.trace(round, agreed(round), weed, progress);
        assertThat(report.title()).isEqualTo("lattice weed (LTW) was seen in Tollow (TOL), Tue 7 Sep 17:20");
        assertThat(report.flagged().keySet()).containsExactlyInAnyOrder("K4", "K2");
        assertThat(report.flagged().get("K4")).extracting("exposed").isEqualTo(true);
        assertThat(report.flagged().get("K2")).extracting("exposed").isEqualTo(false);
        assertThat(lines(report, "Cleanings that change"))
                .hasSize(2)
                .anyMatch(line -> line.startsWith("kit set K4, crew B, Tue 7 Sep 17:50: 90 → 105 min"))
                .anyMatch(line -> line.startsWith("kit set K2, crew B, Wed 8 Sep 13:35: 90 → 105 min"));
        assertThat(lines(report, "Can be ruled out, and why")).anyMatch(line -> line.startsWith("HSK"));
        assertThat(lines(report, "Notices due")).isNotEmpty();
        assertThat(steps).contains("what was exposed", "cleanings that change");
        assertThat(report.week().week().decon())
                .filteredOn(task -> task.kitSet().equals("K4"))
                .singleElement()
                .extracting(task -> Times.clock(task.crewFree(), InventedWeek.ZONE))
                .isEqualTo("19:35");
    }

    @Test
    void ticksGoIntoTheRoundFolderAndComeBackAndOut() throws IOException, DiskException {
        Path folder = copy(TROUBLED);
        Round round = troubled(folder);
        WeekInForce week = agreed(round);
        TickRequest request =
                new TickRequest("A", InventedWeek.MONDAY, "E2", InventedWeek.at(0, "07:30"), "Imre", Optional.empty());
        LoadTick tick = desk.check(round, week, request).fold(TickOutcome.Accepted::tick, refused -> {
            throw new AssertionError(refused);
        });
        desk.keepTicks(folder, List.of(), List.of(tick));
        assertThat(troubled(folder).log().ticks()).containsExactly(tick);
        desk.keepTicks(folder, List.of(tick), List.of());
        assertThat(troubled(folder).log().ticks()).isEmpty();
    }

    /** Service of E1 ends on Tuesday in the scenario. */
    @Test
    void anItemWhoseServiceHasLapsedIsRefused() {
        Round round = troubled(TROUBLED);
        TickRequest request = new TickRequest(
                "A", InventedWeek.MONDAY.plusDays(2), "E1", InventedWeek.at(2, "07:00"), "Imre", Optional.empty());
        TickOutcome.Refused refused = desk.check(round, agreed(round), request)
                .fold(
                        accepted -> {
                            throw new AssertionError(accepted);
                        },
                        no -> no);
        assertThat(refused.objections()).anyMatch(one -> one.words().contains("2027-09-07"));
        assertThat(refused.overridable()).isTrue();
    }

    private Path copy(Path from) throws IOException {
        Path to = Files.createDirectories(temporary.resolve("round"));
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
        return to;
    }

    @Test
    void theDemoIsFoundBesideTheProgram() {
        assertThat(desk.demo()).contains(InventedWeek.FOLDER);
    }
}
