package org.wadeplan.desktop.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.wadeplan.desktop.cleaning.CleaningView;
import org.wadeplan.desktop.command.CommandList;
import org.wadeplan.desktop.command.CommandMenus;
import org.wadeplan.desktop.command.Keys;
import org.wadeplan.desktop.kit.KitView;
import org.wadeplan.desktop.map.MapView;
import org.wadeplan.desktop.pack.PackView;
import org.wadeplan.desktop.problems.ProblemsView;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.Screen;
import org.wadeplan.desktop.start.StartView;
import org.wadeplan.desktop.week.WeekView;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.plan.RoundPlan;

/** The frame: menus and tools above, screens at the left, the shown screen, the checks bar below. */
public final class MainWindow implements WindowActs {

    private final Stage stage;
    private final ViewModels models;
    private final CommandList commands;
    private final Map<Screen, Node> screens = new LinkedHashMap<>();
    private final Map<Screen, List<Region>> panes = new LinkedHashMap<>();
    private final StartView start;
    private final HelpView help;
    private final BooleanProperty helpShown = new SimpleBooleanProperty(false);
    private final Rail rail;
    private final ChecksBar checks;
    private final StackPane middle = new StackPane();

    public MainWindow(Stage stage, ViewModels models, Asking asking) {
        this.stage = stage;
        this.models = models;
        this.commands = DesktopCommands.of(models, asking, this);
        this.start = new StartView(commands);
        this.help = new HelpView(commands);
        this.rail = new Rail(models.session(), commands);
        this.checks = new ChecksBar(models, commands);
        screens(asking);
        models.session().screenProperty().addListener(change -> {
            helpShown.set(false);
            showScreen();
        });
        models.session().sessionProperty().addListener((property, before, now) -> {
            if (before.isPresent() != now.isPresent()) {
                showScreen();
            }
        });
        helpShown.addListener(change -> showScreen());
    }

    private void screens(Asking asking) {
        MapView map =
                new MapView(models.map(), models.candidates(), models.week().factsProperty(), commands, models.text());
        WeekView week = new WeekView(models.week(), commands, models.text());
        ProblemsView problems = new ProblemsView(models.problems(), models.text());
        PackView pack = new PackView(
                models.pack(), commands.named("pack.write"), () -> choosePackFolder(asking), models.text());
        put(Screen.MAP, map, map.panes());
        put(Screen.WEEK, week, week.panes());
        put(Screen.PROBLEMS, problems, problems.panes());
        put(Screen.PACK, pack, pack.panes());
        KitView kit = new KitView(models.kit(), commands.named("load.tick"), models.text());
        CleaningView cleaning = new CleaningView(models.cleaning(), commands, models.text());
        put(Screen.KIT, kit, kit.panes());
        put(Screen.CLEANING, cleaning, cleaning.panes());
    }

    private void put(Screen screen, Node view, List<Region> its) {
        screens.put(screen, view);
        panes.put(screen, its);
    }

    private void choosePackFolder(Asking asking) {
        Optional<Path> now = Optional.of(models.pack().folderProperty().get())
                .filter(typed -> !typed.isBlank())
                .map(Path::of);
        asking.folder(Words.of("ask.pack"), now)
                .ifPresent(folder -> models.pack().folderProperty().set(folder.toString()));
    }

    public CommandList commands() {
        return commands;
    }

    /** Puts everything into the stage and shows it. */
    public void show(double width, double height) {
        BorderPane root = new BorderPane(middle);
        root.getStyleClass().add("window");
        root.setTop(new VBox(CommandMenus.bar(commands), tools()));
        root.setLeft(rail);
        root.setBottom(checks);
        root.styleProperty()
                .bind(Bindings.concat("-fx-font-size: ", models.text().sizePxProperty(), "px;"));
        Scene scene = new Scene(root, width, height);
        scene.getStylesheets()
                .add(Objects.requireNonNull(MainWindow.class.getResource("/org/wadeplan/desktop/wadeplan.css"))
                        .toExternalForm());
        Keys.listen(scene, commands);
        stage.setMinWidth(760);
        stage.setMinHeight(520);
        stage.setScene(scene);
        stage.titleProperty()
                .bind(Bindings.createStringBinding(this::title, models.session().sessionProperty()));
        showScreen();
        stage.show();
        start.panes().get(0).requestFocus();
    }

    private String title() {
        return roundTitle().map(title -> Words.of("window.titleOf", title)).orElse(Words.of("window.title"));
    }

    private Optional<String> roundTitle() {
        return models.session().session().map(now -> now.round()
                .map(round -> round.header().title())
                .orElse(now.folder().toString()));
    }

    private HBox tools() {
        HBox tools = new HBox();
        tools.getStyleClass().addAll("tools", "main-tools");
        for (String id : List.of("round.open", "round.again", "edit.undo", "edit.redo", "pack.write")) {
            tools.getChildren().add(CommandMenus.button(commands.named(id)));
        }
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Label what = new Label();
        what.setId("round-title");
        what.getStyleClass().add("round-title");
        what.setMinWidth(0);
        what.textProperty()
                .bind(Bindings.createStringBinding(
                        this::titleAndVersion, models.session().sessionProperty()));
        what.setTooltip(new Tooltip());
        what.getTooltip().textProperty().bind(what.textProperty());
        tools.getChildren().addAll(space, what);
        return tools;
    }

    private String titleAndVersion() {
        String version = models.session()
                .session()
                .flatMap(PlanSession::plan)
                .map(RoundPlan::version)
                .map(made -> "   " + Words.of("window.plan", made.label()))
                .orElse("");
        return roundTitle().map(title -> title + version).orElse("");
    }

    private void showScreen() {
        Node shown = helpShown.get() ? help : models.session().session().isEmpty() ? start : shown();
        if (!middle.getChildren().equals(List.of(shown))) {
            middle.getChildren().setAll(shown);
            // Panes come into the scene only when their frames are laid out; and it happens later, because removing
            // what had the keyboard makes JavaFX look for another place by itself.
            Platform.runLater(() -> {
                middle.applyCss();
                middle.layout();
                currentPanes().get(0).requestFocus();
            });
        }
        rail.setDisable(models.session().session().isEmpty());
    }

    private Node shown() {
        return Objects.requireNonNull(
                screens.get(models.session().screenProperty().get()));
    }

    private List<Region> currentPanes() {
        if (helpShown.get()) {
            return help.panes();
        }
        return models.session().session().isEmpty()
                ? start.panes()
                : Objects.requireNonNull(
                        panes.get(models.session().screenProperty().get()));
    }

    @Override
    public void cyclePane(int by) {
        List<Region> all = new ArrayList<>(
                currentPanes().stream().filter(MainWindow::isShown).toList());
        all.add(checks);
        if (!rail.isDisabled()) {
            all.add(rail);
        }
        Node focus = stage.getScene().getFocusOwner();
        int at = by > 0 ? -1 : 0;
        for (int i = 0; i < all.size(); i++) {
            if (holds(all.get(i), focus)) {
                at = i;
            }
        }
        focusOn(all.get(Math.floorMod(at + by, all.size())));
    }

    /** Not on a tab that lies behind another. */
    private static boolean isShown(Node pane) {
        for (Node node = pane; node != null; node = node.getParent()) {
            if (!node.isVisible()) {
                return false;
            }
        }
        return pane.getScene() != null;
    }

    private static boolean holds(Node pane, Node focus) {
        for (Node node = focus; node != null; node = node.getParent()) {
            if (node == pane) {
                return true;
            }
        }
        return false;
    }

    /** The pane itself, or the first thing in it that can have the keyboard. */
    private static void focusOn(Region pane) {
        if (pane.isFocusTraversable()) {
            pane.requestFocus();
            return;
        }
        pane.getChildrenUnmodifiable().stream()
                .filter(node -> node.isFocusTraversable() && !node.isDisabled())
                .findFirst()
                .ifPresent(Node::requestFocus);
    }

    @Override
    public void toggleHelp() {
        helpShown.set(!helpShown.get());
    }

    @Override
    public void quit() {
        models.session().work().cancel();
        stage.close();
    }
}
