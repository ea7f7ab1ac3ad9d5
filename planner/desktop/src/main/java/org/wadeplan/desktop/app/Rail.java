package org.wadeplan.desktop.app;

import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.VBox;
import org.wadeplan.desktop.command.AppCommand;
import org.wadeplan.desktop.command.CommandList;
import org.wadeplan.desktop.command.Shortcut;
import org.wadeplan.desktop.session.Screen;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.words.Words;

/** The screens, down the left side. */
final class Rail extends VBox {

    Rail(SessionModel session, CommandList commands) {
        setId("rail");
        getStyleClass().add("rail");
        ToggleGroup group = new ToggleGroup();
        for (Screen screen : Screen.values()) {
            getChildren().add(button(session, screen, commands.named("screen." + screen.name()), group));
        }
    }

    private static ToggleButton button(SessionModel session, Screen screen, AppCommand command, ToggleGroup group) {
        ToggleButton button = new ToggleButton(Words.of("screen." + screen.name()));
        button.setId("rail-" + screen.name());
        Label key = new Label(command.shortcut().map(Shortcut::words).orElse(""));
        key.getStyleClass().add("rail-key");
        button.setGraphic(key);
        button.setContentDisplay(javafx.scene.control.ContentDisplay.BOTTOM);
        button.setToggleGroup(group);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setAccessibleText(command.words());
        button.setOnAction(event -> {
            command.run();
            button.setSelected(true);
        });
        session.screenProperty().addListener((property, before, now) -> button.setSelected(now == screen));
        button.setSelected(session.screenProperty().get() == screen);
        return button;
    }
}
