package org.wadeplan.desktop.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.work.BackgroundWork;
import org.wadeplan.geo.problem.Severity;

class SessionModelTest {

    private final StubDesk desk = new StubDesk();
    private final SessionModel model = new SessionModel(desk, new BackgroundWork(Runnable::run, Runnable::run));

    private void openDemo() {
        model.open(InventedWeek.FOLDER);
    }

    @Test
    void openingARoundWithErrorsShowsTheProblems() {
        openDemo();
        assertThat(model.session()).isPresent();
        assertThat(model.screenProperty().get()).isEqualTo(Screen.PROBLEMS);
        assertThat(model.session().orElseThrow().count(Severity.WARNING)).isEqualTo(2);
        assertThat(model.noticeProperty().get()).isEqualTo("ilvermoor is read and planned.");
    }

    @Test
    void aBrokenFolderIsAnOpenSessionWithItsProblem() {
        model.open(Path.of("broken"));
        assertThat(model.session().orElseThrow().round()).isEmpty();
        assertThat(model.session().orElseThrow().problems()).hasSize(1);
        assertThat(model.noticeProperty().get()).contains("not planned");
    }

    @Test
    void undoGoesBackThroughSelectionsAndRedoForward() {
        openDemo();
        model.selectSite("BRN-01");
        model.selectSite("PEL-01");
        model.undo();
        assertThat(model.selection()).isEqualTo(Selection.site("BRN-01"));
        model.undo();
        assertThat(model.selection()).isEqualTo(Selection.NOTHING);
        model.redo();
        model.redo();
        assertThat(model.selection()).isEqualTo(Selection.site("PEL-01"));
        model.redo();
        assertThat(model.selection()).isEqualTo(Selection.site("PEL-01"));
    }

    @Test
    void anUnknownSiteIsNotSelected() {
        openDemo();
        model.selectSite("XXX-99");
        assertThat(model.selection()).isEqualTo(Selection.NOTHING);
    }

    @Test
    void acceptingARepairReadsAgainWithItAndUndoTakesItBackWithoutReading() {
        openDemo();
        model.accept("reverse:OUN");
        assertThat(desk.asked).containsExactly("open ilvermoor []", "open ilvermoor [reverse:OUN]");
        assertThat(model.session().orElseThrow().acceptedRepairs()).isEqualTo(Set.of("reverse:OUN"));
        model.undo();
        assertThat(model.session().orElseThrow().acceptedRepairs()).isEmpty();
        assertThat(desk.asked).hasSize(2);
    }

    @Test
    void readingAgainKeepsSelectionAndRepairsAndForgetsOlderReadings() {
        openDemo();
        model.accept("reverse:OUN");
        model.selectSite("PEL-01");
        model.readAgain();
        assertThat(desk.asked).last().isEqualTo("open ilvermoor [reverse:OUN]");
        assertThat(model.selection()).isEqualTo(Selection.site("PEL-01"));
        model.undo();
        assertThat(model.selection()).isEqualTo(Selection.site("PEL-01"));
        model.takeBackRepairs();
        assertThat(model.session().orElseThrow().acceptedRepairs()).isEmpty();
    }

    @Test
    void steppingGoesAlongTheSiteListAndRoundItsEnds() {
        openDemo();
        model.step(1);
        assertThat(model.selection().site()).contains("BRN-01");
        model.step(-1);
        assertThat(model.selection().site()).contains("PEL-02");
        model.step(1);
        assertThat(model.selection().site()).contains("BRN-01");
    }

    @Test
    void aStoppedReadingChangesNothing() {
        List<Runnable> waiting = new ArrayList<>();
        SessionModel slow = new SessionModel(desk, new BackgroundWork(waiting::add, Runnable::run));
        slow.open(InventedWeek.FOLDER);
        assertThat(slow.work().busyProperty().get()).isTrue();
        slow.cancelWork();
        waiting.forEach(Runnable::run);
        assertThat(slow.work().busyProperty().get()).isFalse();
        assertThat(slow.session()).isEqualTo(Optional.empty());
        assertThat(slow.noticeProperty().get()).startsWith("Stopped");
    }

    @Test
    void aFaultOfTheProgramIsASentenceNotATrace() {
        model.failed(new IllegalStateException("inner detail\n\tat org.Some.method"));
        assertThat(model.noticeProperty().get())
                .contains("fault of its own (IllegalStateException)")
                .doesNotContain("\tat ");
    }

    @Test
    void historyKeepsAtMostAHundredSteps() {
        openDemo();
        for (int i = 0; i < 130; i++) {
            model.step(1);
        }
        assertThat(model.historyProperty().get().orElseThrow().before()).hasSize(SessionHistory.KEPT);
    }
}
