package org.wadeplan.desktop.app;

import java.util.List;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.wadeplan.desktop.command.AppCommand;
import org.wadeplan.desktop.command.CommandList;
import org.wadeplan.desktop.command.Shortcut;
import org.wadeplan.desktop.look.Tables;
import org.wadeplan.desktop.words.Words;

/** Every command with its keys. */
final class HelpView extends BorderPane {

    private final TableView<AppCommand> table = new TableView<>();

    HelpView(CommandList commands) {
        setId("help-screen");
        getStyleClass().add("help");
        Label title = new Label(Words.of("help.title"));
        title.getStyleClass().add("start-title");
        Label more = new Label(Words.of("help.more"));
        more.setWrapText(true);
        setTop(new VBox(title, more));
        table.setId("help-table");
        table.setAccessibleText(Words.of("help.title"));
        table.getColumns().add(Tables.column("help.menu", 9, HelpView::menu));
        table.getColumns().add(Tables.column("help.command", 28, AppCommand::words));
        table.getColumns().add(Tables.column("help.key", 9, HelpView::key));
        table.getItems().setAll(commands.all());
        setCenter(table);
    }

    List<Region> panes() {
        return List.of(table);
    }

    private static String menu(AppCommand command) {
        return Words.of("menu." + command.menu().name().toLowerCase(Locale.ROOT))
                .replace("_", "");
    }

    private static String key(AppCommand command) {
        return command.shortcut().map(Shortcut::words).orElse("");
    }
}
