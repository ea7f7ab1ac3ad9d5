package org.wadeplan.desktop.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.wadeplan.desktop.find.FindForm;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.Screen;
import org.wadeplan.desktop.session.SeenPest;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;

/** Loading, cleaning and finds in the real window on the invented week, without a display. */
@ExtendWith({NeedsDrawing.class, ApplicationExtension.class})
class DayInWindowTest {

    private final StubDesk desk = new StubDesk();
    private final SessionModel session = new SessionModel(desk, new BackgroundWork(Runnable::run, Runnable::run));
    private final ViewModels models = ViewModels.of(
            session, Path.of("/home/somebody"), Clock.fixed(InventedWeek.at(0, "06:30"), InventedWeek.ZONE));
    private final List<String> questions = new ArrayList<>();
    private Optional<Stage> stage = Optional.empty();

    /** Opens the demo, and saw the first pest of the list in the first water. */
    private final class Answers implements Asking {

        @Override
        public Optional<Path> folder(String title, Optional<Path> startIn) {
            return Optional.of(InventedWeek.FOLDER);
        }

        @Override
        public Optional<SeenPest> pest(FindForm form) {
            questions.add(form.when());
            return form.seen(
                    form.waters().stream().findFirst(), form.pests().stream().findFirst(), form.when());
        }
    }

    @Start
    void start(Stage shown) {
        stage = Optional.of(shown);
        new MainWindow(shown, models, new Answers()).show(1240, 780);
    }

    private static void open(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.O);
        settle();
    }

    private static void settle() {
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static String text(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(Labeled.class).getText();
    }

    private static TableView<?> table(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(TableView.class);
    }

    private Node focus() {
        return stage.orElseThrow().getScene().getFocusOwner();
    }

    private static List<String> allWords(FxRobot robot) {
        return robot.lookup(node -> node instanceof Labeled).queryAll().stream()
                .map(node -> ((Labeled) node).getText())
                .filter(Objects::nonNull)
                .toList();
    }

    @Test
    void aCrewIsLoadedFromTheKeyboardAndARefusalStandsInPlace(FxRobot robot) {
        open(robot);
        models.kit().loaderProperty().set("Imre");
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT5);
        settle();
        assertThat(focus().getId()).isEqualTo("load-table");
        robot.push(KeyCode.SPACE);
        robot.push(KeyCode.DOWN);
        robot.push(KeyCode.SPACE);
        settle();
        assertThat(text(robot, "#kit-progress")).isEqualTo("2 of 5 loaded");
        robot.push(KeyCode.DOWN);
        robot.push(KeyCode.SPACE);
        settle();
        assertThat(text(robot, "#kit-refused-why")).startsWith("P2 is dirty (mud in the plug)");
        assertThat(text(robot, "#kit-progress")).isEqualTo("2 of 5 loaded");
        models.kit().overrideByProperty().set("Thandiwe");
        models.kit().overrideReasonProperty().set("washed at the site");
        robot.clickOn("#kit-let-go");
        settle();
        assertThat(text(robot, "#kit-progress")).isEqualTo("3 of 5 loaded");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertThat(text(robot, "#kit-progress")).isEqualTo("2 of 5 loaded");
    }

    @Test
    void theLanesOfTheKitSetsAreReadAndTimedFromTheKeyboard(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT6);
        settle();
        assertThat(focus().getId()).isEqualTo("cleaning-picture");
        for (int i = 0; i < 4; i++) {
            robot.push(KeyCode.RIGHT);
        }
        settle();
        assertThat(focus().getAccessibleText()).contains("Kit set K1 treating, Mon 17:15 to Mon 18:15");
        assertThat(table(robot, "#step-table").getItems()).hasSize(3);
        robot.push(KeyCode.S);
        settle();
        assertThat(allWords(robot)).anyMatch(words -> words.startsWith("15:00 left: kit set K1, hot dip"));
        robot.push(KeyCode.S);
        settle();
        assertThat(models.cleaning().timers().runningProperty().get()).isEmpty();
    }

    @Test
    void aPestThatWasSeenIsFollowedAndItsPageShown(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.T);
        settle();
        assertThat(questions).last().isEqualTo("2027-09-06 06:30");
        assertThat(session.screenProperty().get()).isEqualTo(Screen.CLEANING);
        assertThat(desk.asked).last().isEqualTo("trace GSA BRN");
        assertThat(allWords(robot)).contains("T2  FIND", "Notices due");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertThat(allWords(robot)).doesNotContain("T2  FIND");
    }
}
