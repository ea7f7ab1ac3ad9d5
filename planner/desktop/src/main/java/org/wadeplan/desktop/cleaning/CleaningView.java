package org.wadeplan.desktop.cleaning;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.wadeplan.desktop.command.CommandList;
import org.wadeplan.desktop.command.CommandMenus;
import org.wadeplan.desktop.look.FactsView;
import org.wadeplan.desktop.look.Tables;
import org.wadeplan.desktop.look.TextSize;
import org.wadeplan.desktop.words.Words;

/** The lanes of the kit sets above; below them why, how all sets stand, and the steps with their timers. */
public final class CleaningView extends BorderPane {

    private final CleaningPane pane;
    private final FactsView why;
    private final FactsView find;
    private final TableView<SetRow> sets = new TableView<>();
    private final StepsView steps;
    private final TabPane tabs = new TabPane();

    public CleaningView(CleaningViewModel model, CommandList commands, TextSize text) {
        setId("cleaning-screen");
        pane = new CleaningPane(model, text);
        why = new FactsView("cleaning-why", model.factsProperty(), "cleaning.choose");
        find = new FactsView("cleaning-find", model.findProperty(), "cleaning.noFind");
        steps = new StepsView(model, commands.named("timer.toggle"), text);
        BorderPane picture = new BorderPane(pane);
        picture.setTop(new VBox(tools(model, commands), text.shownWithKey(key())));
        SplitPane below = new SplitPane(tabs(model, text), steps);
        below.setDividerPositions(0.44);
        SplitPane split = new SplitPane(picture, below);
        split.setOrientation(Orientation.VERTICAL);
        split.setDividerPositions(0.6);
        setTop(new TimerStrip(model.timers()));
        setCenter(split);
    }

    /** In the order that F6 goes through them; a tab that lies behind another is left out by the window. */
    public List<Region> panes() {
        return List.of(pane, why, sets, find, steps.table(), steps.cautions());
    }

    private FlowPane tools(CleaningViewModel model, CommandList commands) {
        FlowPane tools = new FlowPane();
        tools.getStyleClass().add("tools-wrapping");
        tools.getChildren().add(CommandMenus.button(commands.named("pest.seen")));
        for (String id : List.of("picture.in", "picture.out", "picture.all", "picture.selected")) {
            tools.getChildren().add(CommandMenus.button(commands.named(id)));
        }
        tools.getChildren().add(earlier(model, "cleaning.earlier", -60));
        tools.getChildren().add(earlier(model, "cleaning.later", 60));
        Label basis = new Label();
        basis.setId("cleaning-basis");
        model.pictureProperty().addListener(change -> basis.setText(model.basis()));
        basis.setText(model.basis());
        tools.getChildren().add(basis);
        return tools;
    }

    private static Button earlier(CleaningViewModel model, String key, int minutes) {
        Button button = new Button(Words.of(key));
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> model.moveMoment(minutes));
        return button;
    }

    private static FlowPane key() {
        FlowPane key = new FlowPane();
        key.getStyleClass().add("key");
        for (SetState state : SetState.values()) {
            Region box = new Region();
            box.getStyleClass().addAll("swatch", "bar", state.style());
            key.getChildren().add(new Label(state.words(), box));
        }
        Region night = new Region();
        night.getStyleClass().addAll("swatch", "shade-night");
        key.getChildren().add(new Label(Words.of("week.keyNight"), night));
        key.getChildren().add(new Label(Words.of("cleaning.keyArrow")));
        return key;
    }

    private TabPane tabs(CleaningViewModel model, TextSize text) {
        tabs.setId("cleaning-tabs");
        tabs.setAccessibleText(Words.of("cleaning.tabsSpoken"));
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        Tab all = tab("cleaning.tabSets", sets(model, text));
        Tab found = tab("cleaning.tabFind", find);
        tabs.getTabs().addAll(tab("cleaning.tabWhy", why), all, found);
        Runnable name = () -> all.setText(Words.of("cleaning.tabSetsAt", model.momentWords()));
        model.momentProperty().addListener(change -> name.run());
        name.run();
        model.findProperty().addListener((property, before, now) -> {
            if (!now.isEmpty()) {
                tabs.getSelectionModel().select(found);
            }
        });
        return tabs;
    }

    private static Tab tab(String key, Node content) {
        return new Tab(Words.of(key), content);
    }

    private TableView<SetRow> sets(CleaningViewModel model, TextSize text) {
        sets.setId("set-table");
        sets.setAccessibleText(Words.of("cleaning.setsSpoken"));
        sets.setPlaceholder(Tables.empty("cleaning.nothingOpen"));
        sets.getColumns().add(Tables.column("cleaning.set", 3.4, SetRow::kitSet));
        sets.getColumns().add(Tables.markColumn("cleaning.state", 9, SetRow::mark, SetRow::state));
        sets.getColumns().add(Tables.column("cleaning.since", 5.4, SetRow::since));
        sets.getColumns().add(Tables.column("cleaning.until", 5.4, SetRow::until));
        sets.getColumns().add(Tables.column("cleaning.waters", 7, SetRow::waters));
        sets.getColumns().add(Tables.wholeColumn("cleaning.find", 12, SetRow::find));
        Tables.growWith(sets, text);
        Tables.follow(
                sets,
                model.setsProperty(),
                model.selectedSetProperty(),
                SetRow::kitSet,
                row -> model.selectSet(row.kitSet()));
        return sets;
    }
}
