package org.wadeplan.desktop.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A key, with or without others held down.
 *
 * @param key name of the key as a key code has it: {@code O}, {@code F5}, {@code DIGIT1}, {@code ESCAPE}
 * @param control the control key is held (command on a Mac)
 * @param shift the shift key is held
 * @param alt the alt key is held
 */
public record Shortcut(String key, boolean control, boolean shift, boolean alt) {

    public static Shortcut plain(String key) {
        return new Shortcut(key, false, false, false);
    }

    public static Shortcut control(String key) {
        return new Shortcut(key, true, false, false);
    }

    public static Shortcut shift(String key) {
        return new Shortcut(key, false, true, false);
    }

    /** A letter, digit or sign alone: must not fire while somebody types into a field. */
    public boolean typed() {
        return !control && !alt && !key.matches("F\\d+|ESCAPE");
    }

    /** {@code Ctrl+O}, {@code F5}, {@code N} */
    public String words() {
        List<String> parts = new ArrayList<>();
        if (control) {
            parts.add("Ctrl");
        }
        if (alt) {
            parts.add("Alt");
        }
        if (shift) {
            parts.add("Shift");
        }
        parts.add(keyWords());
        return String.join("+", parts);
    }

    private String keyWords() {
        return switch (key) {
            case "ESCAPE" -> "Esc";
            case "PLUS" -> "+";
            case "MINUS" -> "-";
            default -> key.startsWith("DIGIT") ? key.substring(5) : named();
        };
    }

    private String named() {
        return key.length() <= 3 ? key : key.charAt(0) + key.substring(1).toLowerCase(Locale.ROOT);
    }
}
