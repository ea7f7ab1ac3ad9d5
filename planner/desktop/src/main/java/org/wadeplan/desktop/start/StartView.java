package org.wadeplan.desktop.start;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.wadeplan.desktop.command.CommandList;
import org.wadeplan.desktop.command.CommandMenus;
import org.wadeplan.desktop.words.Words;

/** What to do first. */
public final class StartView extends VBox {

    private final Button open;

    public StartView(CommandList commands) {
        setId("start-screen");
        getStyleClass().add("start");
        Label title = new Label(Words.of("start.title"));
        title.getStyleClass().add("start-title");
        open = CommandMenus.button(commands.named("round.open"));
        open.getStyleClass().add("main-button");
        Button demo = CommandMenus.button(commands.named("round.demo"));
        HBox buttons = new HBox(open, demo);
        buttons.getStyleClass().add("actions");
        getChildren().addAll(title, words("start.what"), buttons, words("start.keys"), words("start.safe"));
    }

    private static Label words(String key) {
        Label label = new Label(Words.of(key));
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    /** In the order that F6 goes through them. */
    public List<Region> panes() {
        return List.of(open);
    }
}
