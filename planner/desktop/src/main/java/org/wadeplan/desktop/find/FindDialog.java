package org.wadeplan.desktop.find;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.wadeplan.desktop.session.SeenPest;
import org.wadeplan.desktop.words.Words;

/** Asks which pest was seen, in which water, and when. */
public final class FindDialog extends Dialog<SeenPest> {

    private final FindForm form;
    private final ComboBox<FindForm.Choice> water = new ComboBox<>();
    private final ComboBox<FindForm.Choice> pest = new ComboBox<>();
    private final TextField when = new TextField();
    private final Label missing = new Label();

    public FindDialog(Window owner, FindForm form) {
        this.form = form;
        initOwner(owner);
        setTitle(Words.of("find.title"));
        ButtonType go = new ButtonType(Words.of("find.go"), ButtonBar.ButtonData.OK_DONE);
        getDialogPane().getButtonTypes().setAll(go, ButtonType.CANCEL);
        getDialogPane().getStylesheets().setAll(owner.getScene().getStylesheets());
        getDialogPane().setStyle(owner.getScene().getRoot().getStyle());
        getDialogPane().getStyleClass().add("find-dialog");
        getDialogPane().setHeaderText(Words.of("find.title"));
        getDialogPane().setContent(content());
        Node button = getDialogPane().lookupButton(go);
        button.setId("find-go");
        Runnable check = () -> {
            Optional<String> lacks = form.missing(chosen(water), chosen(pest), when.getText());
            missing.setText(lacks.orElse(Words.of("find.ready")));
            button.setDisable(lacks.isPresent());
        };
        water.valueProperty().addListener(change -> check.run());
        pest.valueProperty().addListener(change -> check.run());
        when.textProperty().addListener(change -> check.run());
        check.run();
        setResultConverter(pressed -> pressed == go
                ? form.seen(chosen(water), chosen(pest), when.getText()).orElse(null)
                : null);
        setOnShown(shown -> water.requestFocus());
    }

    private VBox content() {
        fill(water, "find-water", form.waters(), "find.water");
        fill(pest, "find-pest", form.pests(), "find.pest");
        when.setId("find-when");
        when.setText(form.when());
        when.setAccessibleText(Words.of("find.when"));
        missing.setId("find-missing");
        missing.setWrapText(true);
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        row(grid, 0, "find.water", water);
        row(grid, 1, "find.pest", pest);
        row(grid, 2, "find.when", when);
        Label what = new Label(Words.of("find.what"));
        what.setWrapText(true);
        what.setMinHeight(Label.USE_PREF_SIZE);
        VBox content = new VBox(what, grid, missing);
        content.getStyleClass().add("form-box");
        missing.setMinHeight(Label.USE_PREF_SIZE);
        return content;
    }

    private static void fill(ComboBox<FindForm.Choice> box, String id, List<FindForm.Choice> of, String headKey) {
        box.setId(id);
        box.getItems().setAll(of);
        box.setMaxWidth(Double.MAX_VALUE);
        box.setAccessibleText(Words.of(headKey));
    }

    private static void row(GridPane grid, int at, String headKey, Node field) {
        Label head = new Label(Words.of(headKey));
        head.setLabelFor(field);
        head.setMinWidth(Label.USE_PREF_SIZE);
        GridPane.setHgrow(field, Priority.ALWAYS);
        grid.addRow(at, head, field);
    }

    private static Optional<FindForm.Choice> chosen(ComboBox<FindForm.Choice> box) {
        return Optional.ofNullable(box.getValue());
    }
}
