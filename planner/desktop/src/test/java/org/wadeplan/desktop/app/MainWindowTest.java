package org.wadeplan.desktop.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TableView;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.wadeplan.desktop.command.AppCommand;
import org.wadeplan.desktop.find.FindForm;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.Screen;
import org.wadeplan.desktop.session.SeenPest;
import org.wadeplan.desktop.session.Selection;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;

/** The real window on the invented week, by mouse and by keyboard, without a display. */
@ExtendWith({NeedsDrawing.class, ApplicationExtension.class})
class MainWindowTest {

    private static final List<KeyCode> SCREENS =
            List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6);

    private final StubDesk desk = new StubDesk();
    private final SessionModel session = new SessionModel(desk, new BackgroundWork(Runnable::run, Runnable::run));
    private final ViewModels models = ViewModels.of(
            session, Path.of("/home/somebody"), Clock.fixed(InventedWeek.at(0, "06:30"), InventedWeek.ZONE));
    private final List<String> questions = new ArrayList<>();
    private Optional<Path> answer = Optional.of(InventedWeek.FOLDER);
    private Optional<MainWindow> window = Optional.empty();
    private Optional<Stage> stage = Optional.empty();

    @BeforeAll
    static void readOnce() {
        assertThat(InventedWeek.round().sites()).hasSize(14);
    }

    @Start
    void start(Stage shown) {
        stage = Optional.of(shown);
        MainWindow made = new MainWindow(shown, models, new Answers());
        window = Optional.of(made);
        made.show(1240, 780);
    }

    private final class Answers implements Asking {

        @Override
        public Optional<Path> folder(String title, Optional<Path> startIn) {
            questions.add(title);
            return answer;
        }

        @Override
        public Optional<SeenPest> pest(FindForm form) {
            questions.add(form.when());
            return form.seen(
                    form.waters().stream().findFirst(), form.pests().stream().findFirst(), form.when());
        }
    }

    private MainWindow window() {
        return window.orElseThrow();
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

    @Test
    void emptyItSaysWhatToDoFirst(FxRobot robot) {
        assertThat(robot.lookup("#start-screen").tryQuery()).isPresent();
        assertThat(robot.lookup("#map-screen").tryQuery()).isEmpty();
        assertThat(focus().getId()).isEqualTo("button-round.open");
        assertThat(text(robot, "#count-error")).isEqualTo("0 errors");
        assertThat(robot.lookup("#rail").query().isDisabled()).isTrue();
    }

    @Test
    void openingShowsWhatWasFoundAndTheMapDrawsEveryStream(FxRobot robot) {
        open(robot);
        assertThat(questions).containsExactly("Open a round folder (the one that holds round.json)");
        assertThat(text(robot, "#count-error")).isEqualTo("1 error");
        assertThat(text(robot, "#count-warning")).isEqualTo("2 warnings");
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        settle();
        assertThat(robot.lookup("#map-screen").tryQuery()).isPresent();
        assertThat(models.map().pictureProperty().get().orElseThrow().streams()).hasSize(5);
        assertThat(streamPixels(robot)).isGreaterThan(500);
        assertThat(table(robot, "#site-table").getItems()).hasSize(14);
    }

    /** Pixels of the stream colour in a picture of the map. */
    private static int streamPixels(FxRobot robot) {
        Node map = robot.lookup("#map-picture").query();
        WritableImage image = WaitForAsyncUtils.waitForAsyncFx(10_000, () -> map.snapshot(null, null));
        PixelReader reader = image.getPixelReader();
        int found = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                found += reader.getArgb(x, y) == 0xff0b5f86 ? 1 : 0;
            }
        }
        return found;
    }

    @Test
    void selectingInTheTableSelectsOnTheMapAndInTheWeek(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        settle();
        TableView<?> sites = table(robot, "#site-table");
        robot.interact(() -> sites.getSelectionModel().select(5));
        assertThat(session.selection()).isEqualTo(Selection.site("TOL-01"));
        assertThat(models.map().selectedProperty().get()).contains("TOL-01");
        assertThat(models.week().selectedSiteProperty().get()).contains("TOL-01");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertThat(sites.getSelectionModel().getSelectedIndex()).isEqualTo(-1);
    }

    @Test
    void clickingAPinSelectsTheRow(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        settle();
        var view = models.map().viewProperty().get();
        var at = InventedWeek.round().site("HSK-01").orElseThrow().start();
        Bounds map = robot.lookup("#map-picture").query().localToScreen(new javafx.geometry.BoundingBox(0, 0, 1, 1));
        robot.clickOn(map.getMinX() + view.x(at.eastM()), map.getMinY() + view.y(at.northM()));
        settle();
        assertThat(session.selection().site()).contains("HSK-01");
        assertThat(table(robot, "#site-table").getSelectionModel().getSelectedIndex())
                .isEqualTo(3);
    }

    @Test
    void theMapObeysItsKeys(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        settle();
        double whole = models.map().viewProperty().get().metresPerPx();
        double east = models.map().viewProperty().get().eastM();
        robot.push(KeyCode.RIGHT);
        assertThat(models.map().viewProperty().get().eastM()).isGreaterThan(east);
        robot.push(KeyCode.EQUALS);
        assertThat(models.map().viewProperty().get().metresPerPx()).isLessThan(whole);
        robot.push(KeyCode.DIGIT0);
        assertThat(models.map().viewProperty().get().metresPerPx()).isEqualTo(whole);
        robot.push(KeyCode.N);
        assertThat(session.selection().site()).contains("BRN-01");
        robot.push(KeyCode.F);
        assertThat(models.map().viewProperty().get().metresPerPx()).isLessThan(1);
        robot.push(KeyCode.P);
        assertThat(session.selection().site()).contains("PEL-02");
    }

    @Test
    void theWeekShowsEveryBarAndTheKeyboardGoesThroughThem(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);
        settle();
        Set<Node> bars = robot.lookup(node -> node.getStyleClass().contains("bar")
                        && node.getAccessibleText() != null
                        && node.getAccessibleText().startsWith("Crew "))
                .queryAll();
        assertThat(bars).hasSize(InventedWeek.CREW_BARS);
        assertThat(focus().getId()).isEqualTo("week-picture");
        robot.push(KeyCode.RIGHT);
        robot.push(KeyCode.RIGHT);
        robot.push(KeyCode.RIGHT);
        settle();
        assertThat(session.selection().site()).contains("BRN-01");
        assertThat(robot.lookup(".bar-selected").queryAll()).hasSize(1);
        assertThat(focus().getAccessibleText()).contains("Crew A, Mon 6 Sep: Survey BRN-01, 08:30 to 13:30");
        assertThat(table(robot, "#week-table").getSelectionModel().getSelectedIndex())
                .isEqualTo(2);
        assertThat(robot.lookup("#week-why").query().getAccessibleText()).contains("by rule 5 of survey-method");
    }

    @Test
    void enterOnAProblemGoesToItsCause(FxRobot robot) {
        open(robot);
        settle();
        assertThat(session.screenProperty().get()).isEqualTo(Screen.PROBLEMS);
        assertThat(focus().getId()).isEqualTo("problem-table");
        robot.push(KeyCode.DOWN);
        robot.push(KeyCode.ENTER);
        settle();
        assertThat(session.screenProperty().get()).isEqualTo(Screen.MAP);
        assertThat(session.selection().site()).contains("BRN-02");
        assertThat(text(robot, "#notice")).contains("sites.csv, line 3 (BRN-02)");
    }

    @Test
    void aRepairIsAcceptedByItsButtonAndTakenBackByUndo(FxRobot robot) {
        open(robot);
        settle();
        robot.clickOn("#accept-reverse-OUN");
        settle();
        assertThat(session.session().orElseThrow().acceptedRepairs()).containsExactly("reverse:OUN");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        assertThat(session.session().orElseThrow().acceptedRepairs()).isEmpty();
    }

    @Test
    void theCountsOfTheBarOpenTheirList(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        settle();
        robot.clickOn("#count-warning");
        settle();
        assertThat(session.screenProperty().get()).isEqualTo(Screen.PROBLEMS);
        assertThat(table(robot, "#problem-table").getItems()).hasSize(2);
    }

    @Test
    void theWholePackIsWrittenFromTheKeyboard(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.P);
        settle();
        assertThat(session.screenProperty().get()).isEqualTo(Screen.PACK);
        assertThat(desk.asked).last().isEqualTo("print ilvermoor-2027");
        assertThat(text(robot, "#pack-result")).startsWith("Wrote 2 files, 21 pages to print");
    }

    @Test
    void lettersTypedIntoAFieldAreLettersNotCommands(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT4);
        settle();
        assertThat(focus().getId()).isEqualTo("pack-folder");
        robot.push(KeyCode.N);
        settle();
        assertThat(session.selection()).isEqualTo(Selection.NOTHING);
    }

    @Test
    void aBrokenFolderShowsItsProblemAndNoTrace(FxRobot robot) {
        answer = Optional.of(Path.of("broken"));
        open(robot);
        settle();
        assertThat(text(robot, "#count-error")).isEqualTo("1 error");
        assertThat(session.screenProperty().get()).isEqualTo(Screen.PROBLEMS);
        assertThat(allWords(robot)).anyMatch(words -> words.contains("there is no file of that name"));
        for (KeyCode screen : List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6)) {
            robot.push(KeyCode.CONTROL, screen);
            settle();
            assertThat(allWords(robot)).noneMatch(words -> words.contains("Exception") || words.contains("\tat "));
        }
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);
        settle();
        assertThat(text(robot, "#week-empty")).contains("not planned: 1 error in the way");
    }

    private static List<String> allWords(FxRobot robot) {
        return robot.lookup(node -> node instanceof Labeled).queryAll().stream()
                .map(node -> ((Labeled) node).getText())
                .filter(Objects::nonNull)
                .toList();
    }

    @Test
    void everyCommandStandsInAMenuAndInTheHelpAndHasAKey(FxRobot robot) {
        List<AppCommand> commands = window().commands().all();
        MenuBar bar = robot.lookup("#menus").queryAs(MenuBar.class);
        List<String> items = bar.getMenus().stream()
                .flatMap(menu -> menu.getItems().stream())
                .map(MenuItem::getId)
                .toList();
        assertThat(items)
                .containsExactlyElementsOf(
                        commands.stream().map(command -> "menu-" + command.id()).toList());
        assertThat(commands)
                .allSatisfy(command -> assertThat(command.shortcut()).isPresent());
        robot.push(KeyCode.F1);
        settle();
        assertThat(table(robot, "#help-table").getItems()).hasSize(commands.size());
        robot.push(KeyCode.F1);
        settle();
        assertThat(robot.lookup("#start-screen").tryQuery()).isPresent();
    }

    @Test
    void theKeyboardGoesRoundAllPanesOfEveryScreen(FxRobot robot) {
        open(robot);
        for (KeyCode screen : SCREENS) {
            robot.push(KeyCode.CONTROL, screen);
            settle();
            Node first = focus();
            Set<Node> reached = new LinkedHashSet<>();
            for (int i = 0; i < 8; i++) {
                robot.push(KeyCode.F6);
                settle();
                reached.add(focus());
                if (focus() == first) {
                    break;
                }
            }
            assertThat(focus()).as("round again on " + screen).isSameAs(first);
            assertThat(reached).as("panes of " + screen).hasSizeGreaterThanOrEqualTo(4);
        }
    }

    @Test
    void everyControlSaysWhatItIs(FxRobot robot) {
        open(robot);
        for (KeyCode screen : SCREENS) {
            robot.push(KeyCode.CONTROL, screen);
            settle();
            for (Node node : robot.lookup(node -> node.isFocusTraversable() && node.isVisible())
                    .queryAll()) {
                boolean worded = node instanceof Labeled labeled && labeled.getText() != null;
                assertThat(worded || node.getAccessibleText() != null || node instanceof MenuBar)
                        .as(screen + ": " + node)
                        .isTrue();
            }
        }
    }

    @Test
    void theKeyToTheSignsCanBeHiddenToGiveThePictureRoom(FxRobot robot) {
        open(robot);
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        settle();
        double before = models.map().viewProperty().get().heightPx();
        robot.push(KeyCode.K);
        settle();
        assertThat(models.map().viewProperty().get().heightPx()).isGreaterThan(before + 20);
        robot.push(KeyCode.K);
        settle();
        assertThat(models.map().viewProperty().get().heightPx()).isEqualTo(before);
    }

    @Test
    void largerTextMakesEverythingLarger(FxRobot robot) {
        open(robot);
        Button button =
                robot.lookup(node -> "button-round.open".equals(node.getId())).queryAs(Button.class);
        double before = button.getHeight();
        for (int i = 0; i < 7; i++) {
            robot.push(KeyCode.CONTROL, KeyCode.EQUALS);
        }
        settle();
        assertThat(models.text().px()).isEqualTo(28);
        assertThat(button.getHeight()).isGreaterThan(before * 1.6);
        Label notice = robot.lookup("#notice").queryAs(Label.class);
        assertThat(notice.getFont().getSize()).isEqualTo(28);
    }
}
