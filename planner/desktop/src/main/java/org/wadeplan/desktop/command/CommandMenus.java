package org.wadeplan.desktop.command;

import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import org.wadeplan.desktop.words.Words;

/** Menus and buttons made from the list of commands. */
public final class CommandMenus {

    private CommandMenus() {}

    public static MenuBar bar(CommandList commands) {
        MenuBar bar = new MenuBar();
        bar.setId("menus");
        for (MenuName name : MenuName.values()) {
            Menu menu = new Menu(Words.of("menu." + name.name().toLowerCase(Locale.ROOT)));
            menu.setId("menu-" + name.name().toLowerCase(Locale.ROOT));
            for (AppCommand command : commands.in(name)) {
                menu.getItems().add(item(command));
            }
            bar.getMenus().add(menu);
        }
        return bar;
    }

    private static MenuItem item(AppCommand command) {
        MenuItem item = new MenuItem(command.words());
        item.setId("menu-" + command.id());
        item.setMnemonicParsing(true);
        item.disableProperty().bind(command.enabled().not());
        item.setOnAction(event -> command.run());
        // Signs and letters alone are listened for by Keys only, which knows whether somebody is typing.
        command.shortcut().ifPresent(shortcut -> {
            if (shortcut.typed()) {
                item.setText(command.words() + "   (" + shortcut.words() + ")");
            } else {
                item.setAccelerator(Keys.shown(shortcut));
            }
        });
        return item;
    }

    /** A button that does the command; its tip names the shortcut. */
    public static Button button(AppCommand command) {
        Button button = new Button(command.words());
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setId("button-" + command.id());
        button.disableProperty().bind(command.enabled().not());
        button.setOnAction(event -> command.run());
        String tip = command.words()
                + command.shortcut().map(key -> " (" + key.words() + ")").orElse("");
        button.setTooltip(new Tooltip(tip));
        button.setAccessibleText(tip);
        return button;
    }
}
