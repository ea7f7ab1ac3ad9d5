package org.wadeplan.desktop.look;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import org.wadeplan.desktop.words.Words;

/** Tables of words: columns, and one selection shared with a model. */
public final class Tables {

    private Tables() {}

    /** A column headed by the bundle's text; a cell that is cut off shows its whole text as a tip. */
    public static <R> TableColumn<R, String> column(String headKey, double widthEm, Function<R, String> words) {
        TableColumn<R, String> column = new TableColumn<>(Words.of(headKey));
        column.setCellValueFactory(cell -> new SimpleStringProperty(words.apply(cell.getValue())));
        column.setPrefWidth(widthEm * TextSize.USUAL_PX);
        column.setCellFactory(made -> new WordCell<>(Optional.empty()));
        return column;
    }

    /** Like a plain column, with a shape before the words. */
    public static <R> TableColumn<R, String> markColumn(
            String headKey, double widthEm, Function<R, Mark> mark, Function<R, String> words) {
        TableColumn<R, String> column = column(headKey, widthEm, words);
        column.setCellFactory(made -> new WordCell<>(Optional.of(mark)));
        return column;
    }

    /** Like a plain column, with every word shown: long texts go on in further lines. */
    public static <R> TableColumn<R, String> wholeColumn(String headKey, double widthEm, Function<R, String> words) {
        TableColumn<R, String> column = column(headKey, widthEm, words);
        column.setCellFactory(made -> new WholeCell<>(Optional.empty()));
        return column;
    }

    /** Every word shown, with a shape before them. */
    public static <R> TableColumn<R, String> wholeMarkColumn(
            String headKey, double widthEm, Function<R, Mark> mark, Function<R, String> words) {
        TableColumn<R, String> column = column(headKey, widthEm, words);
        column.setCellFactory(made -> new WholeCell<>(Optional.of(mark)));
        return column;
    }

    /** Columns grow and shrink with the text. */
    public static void growWith(TableView<?> table, TextSize text) {
        text.sizePxProperty().addListener((property, before, now) -> table.getColumns()
                .forEach(column ->
                        column.setPrefWidth(column.getPrefWidth() * now.doubleValue() / before.doubleValue())));
    }

    /** The columns share the table's whole width, so that none lies out of sight; texts go on in further lines. */
    public static void shareWidth(TableView<?> table) {
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    }

    /** The column never gets narrower than that. */
    public static <R, C> TableColumn<R, C> atLeast(double widthEm, TableColumn<R, C> column) {
        column.setMinWidth(widthEm * TextSize.USUAL_PX);
        return column;
    }

    public static Label empty(String key) {
        Label label = new Label(Words.of(key));
        label.setWrapText(true);
        label.getStyleClass().add("empty-words");
        return label;
    }

    /** Rows follow a model, and a row with the selected id is selected; choosing a row tells the model. */
    public static <R> void follow(
            TableView<R> table,
            ReadOnlyObjectProperty<List<R>> rows,
            ReadOnlyObjectProperty<Optional<String>> selected,
            Function<R, String> id,
            Consumer<R> chosen) {
        boolean[] following = {false};
        Runnable show = () -> {
            following[0] = true;
            if (!List.copyOf(table.getItems()).equals(rows.get())) {
                table.getItems().setAll(rows.get());
            }
            mark(table, selected.get(), id);
            following[0] = false;
        };
        rows.addListener((property, before, now) -> show.run());
        selected.addListener((property, before, now) -> show.run());
        table.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> {
            if (now != null && !following[0]) {
                chosen.accept(now);
            }
        });
        show.run();
    }

    private static <R> void mark(TableView<R> table, Optional<String> selected, Function<R, String> id) {
        if (selected.isEmpty()) {
            table.getSelectionModel().clearSelection();
            return;
        }
        for (int i = 0; i < table.getItems().size(); i++) {
            if (id.apply(table.getItems().get(i)).equals(selected.get())) {
                if (table.getSelectionModel().getSelectedIndex() != i) {
                    table.getSelectionModel().clearAndSelect(i);
                    table.scrollTo(Math.max(0, i - 2));
                }
                return;
            }
        }
    }

    private static final class WordCell<R> extends TableCell<R, String> {

        private final Optional<Function<R, Mark>> mark;

        WordCell(Optional<Function<R, Mark>> mark) {
            this.mark = mark;
        }

        @Override
        protected void updateItem(@org.jspecify.annotations.Nullable String words, boolean empty) {
            super.updateItem(words, empty);
            R row = empty ? null : getTableRow() == null ? null : getTableRow().getItem();
            setText(empty ? "" : words);
            setTooltip(empty || words == null || words.length() < 12 ? null : tip(words));
            setGraphic(
                    row == null ? null : mark.map(of -> of.apply(row).shape()).orElse(null));
        }

        private static Tooltip tip(String words) {
            Tooltip tip = new Tooltip(words);
            tip.setWrapText(true);
            tip.setMaxWidth(560);
            return tip;
        }
    }

    private static final class WholeCell<R> extends TableCell<R, String> {

        private final Optional<Function<R, Mark>> mark;
        private final Label words = new Label();

        WholeCell(Optional<Function<R, Mark>> mark) {
            this.mark = mark;
            words.setWrapText(true);
            words.setMinHeight(USE_PREF_SIZE);
            words.getStyleClass().add("whole-words");
            words.setGraphicTextGap(6);
            setPrefHeight(USE_COMPUTED_SIZE);
        }

        @Override
        protected double computePrefHeight(double width) {
            double inside = getTableColumn().getWidth() - snappedLeftInset() - snappedRightInset();
            return isEmpty()
                    ? super.computePrefHeight(width)
                    : words.prefHeight(inside) + snappedTopInset() + snappedBottomInset();
        }

        @Override
        protected void updateItem(@org.jspecify.annotations.Nullable String said, boolean empty) {
            super.updateItem(said, empty);
            R row = empty ? null : getTableRow() == null ? null : getTableRow().getItem();
            words.setText(empty ? "" : said);
            words.setGraphic(
                    row == null ? null : mark.map(of -> of.apply(row).shape()).orElse(null));
            words.setMaxWidth(
                    getTableColumn() == null ? USE_PREF_SIZE : getTableColumn().getWidth() - 8);
            setGraphic(empty ? null : words);
        }
    }
}
