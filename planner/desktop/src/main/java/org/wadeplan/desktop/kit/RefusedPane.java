package org.wadeplan.desktop.kit;

import java.util.Optional;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.words.Words;

/** Why a tick was refused, and the way round it: a name and a reason, both kept with the tick. */
final class RefusedPane extends VBox {

    private final KitViewModel model;
    private final Label head = new Label();
    private final Label why = new Label();
    private final FlowPane override = new FlowPane();

    RefusedPane(KitViewModel model) {
        this.model = model;
        setId("kit-refused");
        getStyleClass().add("refused");
        head.getStyleClass().add("refused-head");
        head.setGraphic(Mark.ERROR.shape());
        why.setId("kit-refused-why");
        why.setWrapText(true);
        Button go = new Button(Words.of("kit.letGoButton"));
        go.setId("kit-let-go");
        go.setMinWidth(USE_PREF_SIZE);
        go.setOnAction(event -> model.letGo());
        override.getStyleClass().add("tools-wrapping");
        override.getChildren()
                .addAll(
                        field("kit-override-by", "kit.overrideBy", 12, model.overrideByProperty()),
                        field("kit-override-reason", "kit.overrideReason", 28, model.overrideReasonProperty()),
                        go);
        ScrollPane reasons = new ScrollPane(why);
        reasons.setFitToWidth(true);
        reasons.getStyleClass().add("refused-reasons");
        reasons.setAccessibleText(Words.of("kit.reasonsSpoken"));
        getChildren().addAll(head, reasons, override);
        model.refusedProperty().addListener((property, before, now) -> show(now));
        show(model.refusedProperty().get());
    }

    private HBox field(String id, String headKey, int columns, StringProperty text) {
        TextField field = new TextField();
        field.setId(id);
        field.setPrefColumnCount(columns);
        field.setAccessibleText(Words.of(headKey));
        field.textProperty().bindBidirectional(text);
        field.setOnAction(event -> model.letGo());
        Label label = new Label(Words.of(headKey));
        label.setLabelFor(field);
        label.setMinWidth(USE_PREF_SIZE);
        HBox pair = new HBox(label, field);
        pair.getStyleClass().add("pair");
        return pair;
    }

    private void show(Optional<Refused> refused) {
        setVisible(refused.isPresent());
        setManaged(refused.isPresent());
        refused.ifPresent(it -> {
            head.setText(Words.of(it.canLetGo() ? "kit.refused" : "kit.notYet", it.what()));
            why.setText(String.join("\n", it.reasons()));
            override.setVisible(it.canLetGo());
            override.setManaged(it.canLetGo());
        });
    }
}
