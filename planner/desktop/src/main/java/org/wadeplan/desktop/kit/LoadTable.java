package org.wadeplan.desktop.kit;

import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.wadeplan.desktop.look.Tables;
import org.wadeplan.desktop.look.TextSize;
import org.wadeplan.desktop.words.Words;

/** The load list: arrow keys go along it, Space or a click on the box ticks. */
final class LoadTable extends TableView<LoadRow> {

    private final KitViewModel model;

    LoadTable(KitViewModel model, TextSize text) {
        this.model = model;
        setId("load-table");
        getStyleClass().add("load-table");
        setAccessibleText(Words.of("kit.tableSpoken"));
        Label empty = Tables.empty("kit.nothingOpen");
        empty.textProperty().bind(model.emptyWordsProperty());
        empty.setId("kit-empty");
        setPlaceholder(empty);
        getColumns().add(Tables.atLeast(4.8, boxes()));
        getColumns().add(Tables.atLeast(4.4, Tables.column("kit.serial", 4.8, LoadRow::serial)));
        getColumns().add(Tables.wholeColumn("kit.what", 16, LoadRow::what));
        getColumns().add(Tables.column("kit.quantity", 6.4, LoadRow::quantity));
        getColumns().add(Tables.atLeast(6.6, Tables.column("kit.validTo", 7, LoadRow::validTo)));
        getColumns().add(Tables.wholeMarkColumn("kit.state", 24, LoadRow::mark, LoadRow::state));
        getColumns().add(Tables.wholeColumn("kit.sites", 7, LoadRow::sites));
        getColumns().forEach(column -> column.setSortable(false));
        Tables.shareWidth(this);
        Tables.growWith(this, text);
        Tables.follow(this, model.rowsProperty(), model.selectedProperty(), LoadRow::id, row -> model.select(row.id()));
        setRowFactory(table -> new Line());
        addEventFilter(KeyEvent.KEY_PRESSED, press -> {
            if (press.getCode() == KeyCode.SPACE && !press.isShortcutDown()) {
                model.toggle();
                press.consume();
            }
        });
    }

    private TableColumn<LoadRow, LoadRow> boxes() {
        TableColumn<LoadRow, LoadRow> column = new TableColumn<>(Words.of("kit.box"));
        column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(cell.getValue()));
        column.setCellFactory(made -> new BoxCell());
        column.setPrefWidth(5 * TextSize.USUAL_PX);
        return column;
    }

    /** A container's head looks like one; the whole of a line's first cell ticks it. */
    private static final class Line extends TableRow<LoadRow> {

        @Override
        protected void updateItem(@Nullable LoadRow row, boolean empty) {
            super.updateItem(row, empty);
            getStyleClass().removeAll("load-head", "load-ticked");
            if (row != null && !empty) {
                if (row.box() == LoadRow.Box.HEAD) {
                    getStyleClass().add("load-head");
                } else if (row.box() == LoadRow.Box.TICKED) {
                    getStyleClass().add("load-ticked");
                }
                setAccessibleText(
                        String.join(", ", row.what(), row.quantity(), Words.of("kit.box." + row.box()), row.state()));
            }
        }
    }

    private final class BoxCell extends TableCell<LoadRow, LoadRow> {

        BoxCell() {
            setOnMouseClicked(click -> {
                LoadRow row = getItem();
                if (row != null && row.tickable()) {
                    model.select(row.id());
                    model.toggle();
                }
            });
        }

        @Override
        protected void updateItem(@Nullable LoadRow row, boolean empty) {
            super.updateItem(row, empty);
            setText("");
            setGraphic(row == null || empty || !row.tickable() ? null : box(row.box() == LoadRow.Box.TICKED));
        }

        private static Region box(boolean ticked) {
            Region mark = new Region();
            mark.getStyleClass().add("load-box-mark");
            mark.setVisible(ticked);
            StackPane box = new StackPane(mark);
            box.getStyleClass().add("load-box");
            return box;
        }
    }
}
