package org.wadeplan.desktop.map;

import javafx.geometry.Orientation;
import javafx.scene.control.Button;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import org.wadeplan.desktop.command.AppCommand;
import org.wadeplan.desktop.command.CommandMenus;
import org.wadeplan.desktop.look.FactsView;
import org.wadeplan.desktop.look.Tables;
import org.wadeplan.desktop.look.TextSize;
import org.wadeplan.desktop.words.Words;

/** The candidates in a table, and below it what is known of the chosen one. */
final class CandidateView extends BorderPane {

    private final TableView<CandidateRow> table = new TableView<>();
    private final FactsView facts;

    CandidateView(CandidateViewModel model, AppCommand search, TextSize text) {
        facts = new FactsView("candidate-facts", model.factsProperty(), "candidate.choose");
        table.setId("candidate-table");
        table.setAccessibleText(Words.of("candidate.tableSpoken"));
        table.setPlaceholder(Tables.empty("candidate.none"));
        table.getColumns().add(Tables.column("candidate.rank", 3.6, CandidateRow::rank));
        table.getColumns().add(Tables.column("candidate.name", 4.4, CandidateRow::name));
        table.getColumns().add(Tables.column("candidate.stream", 5.5, CandidateRow::stream));
        table.getColumns().add(Tables.column("candidate.water", 6, CandidateRow::water));
        table.getColumns().add(Tables.column("candidate.fromMouth", 8.5, CandidateRow::fromMouth));
        table.getColumns().add(Tables.column("candidate.score", 8, CandidateRow::score));
        Tables.growWith(table, text);
        Tables.follow(
                table,
                model.rowsProperty(),
                model.chosenProperty(),
                CandidateRow::name,
                row -> model.choose(row.name()));
        SplitPane split = new SplitPane(table, facts);
        split.setOrientation(Orientation.VERTICAL);
        split.setDividerPositions(0.45);
        Button button = CommandMenus.button(search);
        setTop(button);
        setCenter(split);
    }

    TableView<CandidateRow> table() {
        return table;
    }

    FactsView facts() {
        return facts;
    }
}
