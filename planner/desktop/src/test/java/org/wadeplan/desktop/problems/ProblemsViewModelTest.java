package org.wadeplan.desktop.problems;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.Screen;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;

class ProblemsViewModelTest {

    private final StubDesk desk = new StubDesk();
    private final SessionModel session = new SessionModel(desk, new BackgroundWork(Runnable::run, Runnable::run));
    private final ProblemsViewModel problems = new ProblemsViewModel(session);

    @BeforeEach
    void open() {
        session.open(InventedWeek.FOLDER);
    }

    private void choose(int row) {
        problems.choose(Optional.of(problems.rowsProperty().get().get(row)));
    }

    @Test
    void everyProblemIsListedWithItsSite() {
        assertThat(problems.rowsProperty().get())
                .extracting(ProblemRow::site)
                .containsExactly(Optional.empty(), Optional.of("BRN-02"), Optional.of("PEL-01"), Optional.empty());
    }

    @Test
    void jumpingFromASiteFileShowsTheSiteOnTheMap() {
        choose(1);
        problems.jump();
        assertThat(session.selection().site()).contains("BRN-02");
        assertThat(session.screenProperty().get()).isEqualTo(Screen.MAP);
        assertThat(session.noticeProperty().get())
                .isEqualTo("BRN-02: from sites.csv, line 3 (BRN-02), column max_depth_m");
    }

    @Test
    void jumpingFromTheWeekShowsTheWeek() {
        choose(2);
        problems.jump();
        assertThat(session.selection().site()).contains("PEL-01");
        assertThat(session.screenProperty().get()).isEqualTo(Screen.WEEK);
    }

    @Test
    void aProblemOfNoSiteSaysWhereItStands() {
        choose(3);
        assertThat(problems.canJump()).isFalse();
        problems.jump();
        assertThat(session.noticeProperty().get()).isEqualTo("This one belongs to no site. It stands in travel.csv.");
        assertThat(problems.where(problems.rowsProperty().get().get(3)))
                .isEqualTo("travel.csv\n" + InventedWeek.FOLDER.resolve("travel.csv"));
    }

    @Test
    void repairsAreFoundInTheRemedyAndAccepted() {
        assertThat(problems.rowsProperty().get().get(0).repairs()).containsExactly("reverse:OUN");
        problems.accept("reverse:OUN");
        assertThat(desk.asked).last().isEqualTo("open ilvermoor [reverse:OUN]");
    }

    @Test
    void aRemedyMayOfferSeveralRepairs() {
        Problem either = Problem.error(
                "flow-unknown",
                SourcePlace.part("streams.gpkg", "OUN"),
                "nothing says which way it flows",
                "",
                "fill in the flow column, or answer with --accept as-drawn:OUN or --accept reverse:OUN.");
        assertThat(RepairNames.in(either)).isEqualTo(List.of("as-drawn:OUN", "reverse:OUN"));
    }

    @Test
    void onlyOneKindCanBeShown() {
        problems.onlyProperty().set(Optional.of(Severity.WARNING));
        assertThat(problems.rowsProperty().get()).hasSize(2);
        assertThat(problems.emptyWordsProperty().get()).isEqualTo("None of this kind was found.");
        problems.onlyProperty().set(Optional.empty());
        assertThat(problems.rowsProperty().get()).hasSize(4);
    }

    @Test
    void aBrokenFolderShowsItsProblem() {
        session.open(Path.of("broken"));
        assertThat(problems.rowsProperty().get())
                .singleElement()
                .satisfies(row -> assertThat(row.problem().code()).isEqualTo("no-round-folder"));
    }
}
