package org.wadeplan.desktop.week;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
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

/** The timeline, with its table and the reasons for the selected bar below it. */
public final class WeekView extends BorderPane {

    private final WeekPane pane;
    private final TableView<WeekRow> table = new TableView<>();
    private final FactsView reasons;

    public WeekView(WeekViewModel model, CommandList commands, TextSize text) {
        pane = new WeekPane(model, text);
        reasons = new FactsView("week-why", model.factsProperty(), "week.chooseBar");
        BorderPane picture = new BorderPane(pane);
        picture.setTop(new VBox(tools(commands), text.shownWithKey(key())));
        SplitPane below = new SplitPane(rows(model, text), reasons);
        below.setDividerPositions(0.62);
        SplitPane split = new SplitPane(picture, below);
        split.setOrientation(Orientation.VERTICAL);
        split.setDividerPositions(0.62);
        setCenter(split);
        setId("week-screen");
    }

    /** In the order that F6 goes through them. */
    public List<Region> panes() {
        return List.of(pane, table, reasons);
    }

    private static FlowPane tools(CommandList commands) {
        FlowPane tools = new FlowPane();
        tools.getStyleClass().add("tools-wrapping");
        for (String id :
                List.of("picture.in", "picture.out", "picture.all", "picture.selected", "site.previous", "site.next")) {
            tools.getChildren().add(CommandMenus.button(commands.named(id)));
        }
        return tools;
    }

    private static FlowPane key() {
        FlowPane key = new FlowPane();
        key.getStyleClass().add("key");
        for (BarKind kind : BarKind.values()) {
            if (kind != BarKind.UNLOAD && kind != BarKind.USED) {
                key.getChildren().add(swatch(kind.style(), kind.words()));
            }
        }
        key.getChildren().add(swatch("bar-reserve", Words.of("week.keyReserve")));
        key.getChildren().add(swatch("key-slack", Words.of("week.keySlack")));
        key.getChildren().add(swatch("shade-night", Words.of("week.keyNight")));
        key.getChildren().add(swatch("shade-low-water", Words.of("week.keyLowWater")));
        return key;
    }

    private static Label swatch(String style, String words) {
        Region box = new Region();
        box.getStyleClass().addAll("swatch", style);
        return new Label(words, box);
    }

    private TableView<WeekRow> rows(WeekViewModel model, TextSize text) {
        table.setId("week-table");
        table.setAccessibleText(Words.of("week.tableSpoken"));
        table.setPlaceholder(Tables.empty("week.noRows"));
        table.getColumns().add(Tables.column("week.day", 6, WeekRow::day));
        table.getColumns().add(Tables.column("week.crew", 4, WeekRow::crew));
        table.getColumns().add(Tables.column("week.start", 4, WeekRow::start));
        table.getColumns().add(Tables.column("week.end", 4, WeekRow::end));
        table.getColumns().add(Tables.column("week.what", 12, WeekRow::what));
        table.getColumns().add(Tables.column("week.site", 6, WeekRow::site));
        table.getColumns().add(Tables.column("week.kitSets", 5, WeekRow::kitSets));
        table.getColumns().add(Tables.column("week.slack", 6, WeekRow::slack));
        table.getColumns().add(Tables.column("week.boundBy", 16, WeekRow::boundBy));
        Tables.growWith(table, text);
        Tables.follow(
                table, model.rowsProperty(), model.selectedBarProperty(), WeekRow::id, row -> model.select(row.id()));
        return table;
    }
}
