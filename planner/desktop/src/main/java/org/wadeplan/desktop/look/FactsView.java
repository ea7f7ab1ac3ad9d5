package org.wadeplan.desktop.look;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** Headings with their texts, one below the other; scrolls, and can have the keyboard. */
public final class FactsView extends ScrollPane {

    private final VBox box = new VBox();
    private final String emptyKey;

    /**
     * Follows the facts about what is selected.
     *
     * @param emptyKey key of the words that are shown where there are none
     */
    public FactsView(String id, ReadOnlyObjectProperty<List<Fact>> facts, String emptyKey) {
        this.emptyKey = emptyKey;
        setId(id);
        box.setId(id + "-lines");
        box.getStyleClass().add("facts");
        setContent(box);
        setFitToWidth(true);
        setFocusTraversable(true);
        facts.addListener((property, before, now) -> show(now));
        show(facts.get());
    }

    private void show(List<Fact> facts) {
        box.getChildren().clear();
        if (facts.isEmpty()) {
            box.getChildren().add(Tables.empty(emptyKey));
        }
        StringBuilder spoken = new StringBuilder();
        for (Fact fact : facts) {
            Label head = new Label(fact.head());
            head.getStyleClass().add("fact-head");
            head.setWrapText(true);
            head.setMinHeight(USE_PREF_SIZE);
            Label words = new Label(fact.text());
            words.setWrapText(true);
            words.setMinHeight(USE_PREF_SIZE);
            box.getChildren().addAll(head, words);
            spoken.append(fact.head()).append(": ").append(fact.text()).append(". ");
        }
        setAccessibleText(spoken.toString());
        setVvalue(0);
    }
}
