package org.wadeplan.desktop.command;

import java.util.Optional;
import javafx.beans.binding.BooleanExpression;

/**
 * One thing that a person can have done. The same command stands in the menu, the tool row, the shortcuts and the help.
 *
 * @param id stable, with a dot: {@code round.open}; its words stand in the bundle under {@code command.} and the id
 * @param menu the menu that it stands in
 * @param words as on the menu
 * @param shortcut key or key chord; empty where the menu is its only way
 * @param enabled whether it can be done now
 * @param action does it
 */
public record AppCommand(
        String id,
        MenuName menu,
        String words,
        Optional<Shortcut> shortcut,
        BooleanExpression enabled,
        Runnable action) {

    /** Does it where it can be done now; otherwise nothing. */
    public void run() {
        if (enabled.get()) {
            action.run();
        }
    }
}
