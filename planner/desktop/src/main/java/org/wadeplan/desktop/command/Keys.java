package org.wadeplan.desktop.command;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** Listens for shortcuts anywhere in a scene, except for single letters while somebody types. */
public final class Keys {

    private Keys() {}

    public static void listen(Scene scene, CommandList commands) {
        scene.addEventFilter(KeyEvent.KEY_PRESSED, press -> {
            boolean typing = scene.getFocusOwner() instanceof TextInputControl;
            for (AppCommand command : commands.all()) {
                if (command.enabled().get()
                        && command.shortcut()
                                .filter(key -> fits(key, press, typing))
                                .isPresent()) {
                    command.run();
                    press.consume();
                    return;
                }
            }
        });
    }

    private static boolean fits(Shortcut shortcut, KeyEvent press, boolean typing) {
        return !(typing && shortcut.typed())
                && codes(shortcut).contains(press.getCode())
                && shortcut.control() == press.isShortcutDown()
                && shortcut.alt() == press.isAltDown()
                && (shortcut.shift() == press.isShiftDown() || shortcut.key().equals("PLUS"));
    }

    /** A sign has several keys: on the number block, or with shift on some keyboards. */
    private static List<KeyCode> codes(Shortcut shortcut) {
        return switch (shortcut.key()) {
            case "PLUS" -> List.of(KeyCode.PLUS, KeyCode.EQUALS, KeyCode.ADD);
            case "MINUS" -> List.of(KeyCode.MINUS, KeyCode.SUBTRACT);
            case "DIGIT0" -> List.of(KeyCode.DIGIT0, KeyCode.NUMPAD0);
            default -> List.of(KeyCode.valueOf(shortcut.key()));
        };
    }

    /** The chord as a menu shows it. */
    static KeyCombination shown(Shortcut shortcut) {
        List<KeyCombination.Modifier> held = new ArrayList<>();
        if (shortcut.control()) {
            held.add(KeyCombination.SHORTCUT_DOWN);
        }
        if (shortcut.shift()) {
            held.add(KeyCombination.SHIFT_DOWN);
        }
        if (shortcut.alt()) {
            held.add(KeyCombination.ALT_DOWN);
        }
        return new KeyCodeCombination(codes(shortcut).get(0), held.toArray(new KeyCombination.Modifier[0]));
    }
}
