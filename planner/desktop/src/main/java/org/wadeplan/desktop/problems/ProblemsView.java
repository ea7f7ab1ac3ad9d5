package org.wadeplan.desktop.problems;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.look.Tables;
import org.wadeplan.desktop.look.TextSize;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.geo.problem.Severity;

/** The list of problems, with the chosen one spelled out below it. */
public final class ProblemsView extends BorderPane {

    private final ProblemsViewModel model;
    private final TableView<ProblemRow> table = new TableView<>();
    private final VBox detail = new VBox();
    private final ScrollPane scroll = new ScrollPane(detail);

    public ProblemsView(ProblemsViewModel model, TextSize text) {
        this.model = model;
        setId("problems-screen");
        detail.setId("problem-detail");
        detail.getStyleClass().add("facts");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(true);
        SplitPane split = new SplitPane(table(text), scroll);
        split.setOrientation(Orientation.VERTICAL);
        split.setDividerPositions(0.6);
        setTop(filters());
        setCenter(split);
        model.chosenProperty().addListener((property, before, now) -> show(now));
        show(model.chosenProperty().get());
    }

    /** In the order that F6 goes through them. */
    public List<Region> panes() {
        return List.of(table, scroll);
    }

    private HBox filters() {
        HBox row = new HBox();
        row.getStyleClass().add("tools");
        ToggleGroup group = new ToggleGroup();
        row.getChildren().add(filter(group, Optional.empty()));
        Arrays.stream(Severity.values())
                .map(severity -> filter(group, Optional.of(severity)))
                .forEach(row.getChildren()::add);
        return row;
    }

    private ToggleButton filter(ToggleGroup group, Optional<Severity> severity) {
        String key = severity.map(Severity::name).orElse("ALL");
        ToggleButton button = new ToggleButton(Words.of("problems.show." + key));
        button.setId("problems-show-" + key);
        severity.ifPresent(of -> button.setGraphic(Mark.valueOf(of.name()).shape()));
        button.setToggleGroup(group);
        button.setSelected(model.onlyProperty().get().equals(severity));
        button.setOnAction(event -> {
            button.setSelected(true);
            model.onlyProperty().set(severity);
        });
        model.onlyProperty().addListener((property, before, now) -> button.setSelected(now.equals(severity)));
        return button;
    }

    private TableView<ProblemRow> table(TextSize text) {
        table.setId("problem-table");
        table.setAccessibleText(Words.of("problems.tableSpoken"));
        Label empty = Tables.empty("problems.none");
        table.setPlaceholder(empty);
        empty.textProperty().bind(model.emptyWordsProperty());
        table.getColumns()
                .add(Tables.markColumn(
                        "problems.severity",
                        6,
                        row -> Mark.valueOf(row.problem().severity().name()),
                        row -> Words.of("severity." + row.problem().severity().name())));
        table.getColumns()
                .add(Tables.column(
                        "problems.place", 17, row -> row.problem().place().toString()));
        table.getColumns()
                .add(Tables.column("problems.found", 30, row -> row.problem().found()));
        table.getColumns()
                .add(Tables.column("problems.allowed", 17, row -> row.problem().expected()));
        table.getColumns()
                .add(Tables.column("problems.remedy", 24, row -> row.problem().remedy()));
        table.getColumns()
                .add(Tables.column("problems.code", 10, row -> row.problem().code()));
        Tables.growWith(table, text);
        Tables.follow(
                table,
                model.rowsProperty(),
                model.chosenIdProperty(),
                ProblemRow::id,
                row -> model.choose(Optional.of(row)));
        jumpOnEnterOrDoubleClick(table);
        return table;
    }

    private void jumpOnEnterOrDoubleClick(TableView<ProblemRow> table) {
        table.addEventHandler(KeyEvent.KEY_PRESSED, press -> {
            if (press.getCode() == KeyCode.ENTER) {
                model.jump();
                press.consume();
            }
        });
        table.setOnMouseClicked(click -> {
            if (click.getClickCount() == 2) {
                model.jump();
            }
        });
    }

    private void show(Optional<ProblemRow> chosen) {
        detail.getChildren().clear();
        if (chosen.isEmpty()) {
            scroll.setAccessibleText(Words.of("problems.choose"));
            detail.getChildren().add(Tables.empty("problems.choose"));
            return;
        }
        ProblemRow row = chosen.get();
        scroll.setAccessibleText(row.problem().sentence());
        detail.getChildren().add(actions(row));
        add("problems.found", row.problem().found());
        add("problems.allowed", row.problem().expected());
        add("problems.remedy", row.problem().remedy());
        add("problems.place", model.where(row));
        add("problems.code", row.problem().code());
    }

    private HBox actions(ProblemRow row) {
        HBox actions = new HBox();
        actions.getStyleClass().add("actions");
        Button jump = new Button(
                row.site().map(site -> Words.of("problems.goTo", site)).orElse(Words.of("problems.cause")));
        jump.setId("problem-jump");
        jump.setDisable(row.site().isEmpty());
        jump.setOnAction(event -> model.jump());
        actions.getChildren().add(jump);
        for (String repair : row.repairs()) {
            Button accept = new Button(Words.of("problems.accept", repair));
            accept.setId("accept-" + repair.replace(':', '-'));
            accept.setAccessibleText(Words.of("problems.acceptSpoken", repair));
            accept.setOnAction(event -> model.accept(repair));
            actions.getChildren().add(accept);
        }
        return actions;
    }

    private void add(String headKey, String text) {
        if (!text.isBlank()) {
            Label head = new Label(Words.of(headKey));
            head.getStyleClass().add("fact-head");
            Label words = new Label(text);
            words.setWrapText(true);
            words.setMinHeight(USE_PREF_SIZE);
            detail.getChildren().addAll(head, words);
        }
    }
}
