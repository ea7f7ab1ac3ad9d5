package org.wadeplan.desktop.cleaning;

import javafx.geometry.Orientation;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import org.wadeplan.desktop.command.AppCommand;
import org.wadeplan.desktop.command.CommandMenus;
import org.wadeplan.desktop.look.FactsView;
import org.wadeplan.desktop.look.Tables;
import org.wadeplan.desktop.look.TextSize;
import org.wadeplan.desktop.words.Words;

/** The steps of the selected cleaning, the button of the timer, and the cautions. */
final class StepsView extends BorderPane {

    private final TableView<StepRow> table = new TableView<>();
    private final FactsView cautions;

    StepsView(CleaningViewModel model, AppCommand timer, TextSize text) {
        cautions = new FactsView("cleaning-cautions", model.cautionsProperty(), "cleaning.noCautions");
        HBox tools = new HBox(CommandMenus.button(timer));
        tools.getStyleClass().add("tools");
        setTop(tools);
        SplitPane split = new SplitPane(steps(model, text), cautions);
        split.setOrientation(Orientation.VERTICAL);
        split.setDividerPositions(0.6);
        setCenter(split);
    }

    TableView<StepRow> table() {
        return table;
    }

    FactsView cautions() {
        return cautions;
    }

    private TableView<StepRow> steps(CleaningViewModel model, TextSize text) {
        table.setId("step-table");
        table.setAccessibleText(Words.of("cleaning.stepsSpoken"));
        table.setPlaceholder(Tables.empty("cleaning.chooseCleaning"));
        table.getColumns().add(Tables.atLeast(5.4, Tables.wholeColumn("cleaning.when", 7.2, StepRow::when)));
        table.getColumns().add(Tables.wholeColumn("cleaning.step", 14, StepRow::step));
        table.getColumns().add(Tables.atLeast(5.2, Tables.wholeColumn("cleaning.minutes", 5.4, StepRow::minutes)));
        table.getColumns().add(Tables.atLeast(5.2, Tables.wholeColumn("cleaning.where", 7, StepRow::where)));
        table.getColumns().add(Tables.wholeColumn("cleaning.amounts", 15, StepRow::amounts));
        table.getColumns().forEach(column -> column.setSortable(false));
        Tables.shareWidth(table);
        Tables.growWith(table, text);
        Tables.follow(
                table,
                model.stepRowsProperty(),
                model.selectedStepProperty(),
                StepRow::id,
                row -> model.selectStep(row.id()));
        return table;
    }
}
