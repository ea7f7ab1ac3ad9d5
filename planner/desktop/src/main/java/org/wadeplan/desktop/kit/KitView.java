package org.wadeplan.desktop.kit;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.wadeplan.desktop.command.AppCommand;
import org.wadeplan.desktop.command.CommandMenus;
import org.wadeplan.desktop.look.FactsView;
import org.wadeplan.desktop.look.TextSize;
import org.wadeplan.desktop.words.Words;

/** The load list of a crew-day: who and when, what is short, the list to tick, and what was refused. */
public final class KitView extends BorderPane {

    private final ComboBox<CrewDayChoice> crewDay = new ComboBox<>();
    private final ComboBox<String> loader = new ComboBox<>();
    private final FactsView shortages;
    private final LoadTable table;

    public KitView(KitViewModel model, AppCommand tick, TextSize text) {
        setId("kit-screen");
        shortages = new FactsView("kit-shortages", model.shortagesProperty(), "kit.nothingShort");
        shortages.getStyleClass().add("kit-shortages");
        table = new LoadTable(model, text);
        setTop(new VBox(chooser(model, tick), basis(model), shortages));
        setCenter(table);
        setBottom(new RefusedPane(model));
        model.rowsProperty().addListener(change -> hideShortages(model));
        hideShortages(model);
    }

    /** Without a list nothing can be said of what is short. */
    private void hideShortages(KitViewModel model) {
        boolean listed = !model.rowsProperty().get().isEmpty();
        shortages.setVisible(listed);
        shortages.setManaged(listed);
    }

    /** In the order that F6 goes through them. */
    public List<Region> panes() {
        return List.of(table, crewDay, loader, shortages);
    }

    private FlowPane chooser(KitViewModel model, AppCommand tick) {
        crewDay.setId("kit-crew-day");
        crewDay.setAccessibleText(Words.of("kit.chooseCrewDay"));
        model.crewDaysProperty().addListener(change -> days(model));
        model.chosenProperty().addListener(change -> days(model));
        days(model);
        crewDay.setOnAction(event -> Optional.ofNullable(crewDay.getValue()).ifPresent(model::choose));
        loader.setId("kit-loader");
        loader.setEditable(true);
        loader.setAccessibleText(Words.of("kit.loader"));
        loader.getEditor().setAccessibleText(Words.of("kit.loader"));
        loader.setPromptText(Words.of("kit.loaderPrompt"));
        loader.getEditor().textProperty().bindBidirectional(model.loaderProperty());
        model.peopleProperty().addListener((property, before, now) -> names(model, now));
        names(model, model.peopleProperty().get());
        FlowPane row = new FlowPane(
                pair("kit.crewDayHead", crewDay),
                pair("kit.loader", loader),
                CommandMenus.button(tick),
                progress(model));
        row.getStyleClass().add("tools-wrapping");
        return row;
    }

    private static Label basis(KitViewModel model) {
        Label basis = new Label();
        basis.setId("kit-basis");
        basis.getStyleClass().add("basis");
        basis.setWrapText(true);
        model.rowsProperty().addListener(change -> basis.setText(model.basis()));
        basis.setText(model.basis());
        return basis;
    }

    private void days(KitViewModel model) {
        if (!List.copyOf(crewDay.getItems()).equals(model.crewDaysProperty().get())) {
            crewDay.getItems().setAll(model.crewDaysProperty().get());
        }
        crewDay.setValue(model.chosenProperty().get().orElse(null));
        crewDay.setDisable(crewDay.getItems().isEmpty());
        loader.setDisable(crewDay.getItems().isEmpty());
    }

    /** Choosing names again must not wipe out who was said to load. */
    private void names(KitViewModel model, List<String> now) {
        String said = model.loaderProperty().get();
        loader.getItems().setAll(now);
        model.loaderProperty().set(said);
    }

    private static HBox pair(String headKey, Region field) {
        Label head = new Label(Words.of(headKey));
        head.setLabelFor(field);
        head.setMinWidth(USE_PREF_SIZE);
        HBox pair = new HBox(head, field);
        pair.getStyleClass().add("pair");
        return pair;
    }

    private static HBox progress(KitViewModel model) {
        Label words = new Label();
        words.setId("kit-progress");
        words.getStyleClass().add("kit-progress");
        words.setMinWidth(USE_PREF_SIZE);
        ProgressBar bar = new ProgressBar(0);
        bar.setAccessibleText(Words.of("kit.progressSpoken"));
        Runnable show = () -> {
            words.setText(model.progress());
            bar.setProgress(model.share());
            bar.setVisible(!model.progress().isEmpty());
        };
        model.rowsProperty().addListener(change -> show.run());
        show.run();
        HBox progress = new HBox(words, bar);
        progress.getStyleClass().add("pair");
        return progress;
    }
}
