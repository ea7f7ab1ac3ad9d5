package org.wadeplan.desktop.pack;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.wadeplan.desktop.command.AppCommand;
import org.wadeplan.desktop.command.CommandMenus;
import org.wadeplan.desktop.look.Tables;
import org.wadeplan.desktop.look.TextSize;
import org.wadeplan.desktop.words.Words;

/** The pack: where to, what, and what came of it. */
public final class PackView extends BorderPane {

    private final TableView<PackLine> table = new TableView<>();
    private final TextField folder = new TextField();

    public PackView(PackViewModel model, AppCommand write, Runnable chooseFolder, TextSize text) {
        setId("pack-screen");
        folder.setId("pack-folder");
        folder.textProperty().bindBidirectional(model.folderProperty());
        folder.setAccessibleText(Words.of("pack.folder"));
        HBox.setHgrow(folder, Priority.ALWAYS);
        Label head = new Label(Words.of("pack.folder"));
        head.setLabelFor(folder);
        head.setMinWidth(USE_PREF_SIZE);
        Button choose = new Button(Words.of("pack.choose"));
        choose.setId("pack-choose");
        choose.setMinWidth(USE_PREF_SIZE);
        choose.setOnAction(event -> chooseFolder.run());
        Button go = CommandMenus.button(write);
        go.setMinWidth(USE_PREF_SIZE);
        go.getStyleClass().add("main-button");
        HBox where = new HBox(head, folder, choose, go);
        where.getStyleClass().add("tools");
        setTop(new VBox(where, mind(model)));
        setCenter(lines(model));
        Tables.growWith(table, text);
        setBottom(result(model));
    }

    /** In the order that F6 goes through them. */
    public List<Region> panes() {
        return List.of(folder, table);
    }

    private static Label mind(PackViewModel model) {
        Label mind = new Label(model.warning());
        mind.setId("pack-mind");
        mind.setWrapText(true);
        mind.getStyleClass().add("mind");
        model.linesProperty().addListener(change -> mind.setText(model.warning()));
        model.readyProperty().addListener(change -> mind.setText(model.warning()));
        return mind;
    }

    private TableView<PackLine> lines(PackViewModel model) {
        table.setId("pack-table");
        table.setAccessibleText(Words.of("pack.tableSpoken"));
        Label empty = Tables.empty("pack.nothingOpen");
        table.setPlaceholder(empty);
        table.getColumns().add(Tables.column("pack.file", 18, PackLine::file));
        table.getColumns().add(Tables.column("pack.what", 34, PackLine::what));
        table.getColumns().add(Tables.column("pack.pages", 5, PackLine::pages));
        table.getColumns().add(Tables.column("pack.size", 6, PackLine::size));
        table.getColumns().add(Tables.column("pack.state", 9, PackLine::state));
        model.linesProperty().addListener((property, before, now) -> {
            table.getItems().setAll(now);
            empty.setText(model.warning());
        });
        table.getItems().setAll(model.linesProperty().get());
        empty.setText(model.warning());
        return table;
    }

    private static Label result(PackViewModel model) {
        Label result = new Label();
        result.setId("pack-result");
        result.setWrapText(true);
        result.setMaxWidth(Double.MAX_VALUE);
        result.getStyleClass().add("result");
        result.textProperty().bind(model.resultProperty());
        result.managedProperty().bind(result.textProperty().isNotEmpty());
        result.visibleProperty().bind(result.textProperty().isNotEmpty());
        return result;
    }
}
