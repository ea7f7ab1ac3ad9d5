package org.wadeplan.desktop.words;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The window's texts. Places for values are written {@code {0}}, {@code {1}}; nothing else in a text is special. */
public final class Words {

    private static final ResourceBundle TEXTS =
            ResourceBundle.getBundle("org.wadeplan.desktop.messages", Locale.ENGLISH);

    private Words() {}

    /**
     * A text with its values filled in.
     *
     * @throws MissingResourceException where the bundle lacks the key, which is a fault of the program
     */
    public static String of(String key, Object... values) {
        String text = TEXTS.getString(key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
    }

    /** {@code 1 error}, {@code 3 errors}: the number, then the word from {@code key.one} or {@code key.other}. */
    public static String count(String key, int number) {
        return number + " " + of(key + (number == 1 ? ".one" : ".other"));
    }

    /** Whether the bundle has a text of that name. */
    public static boolean has(String key) {
        return TEXTS.containsKey(key);
    }
}
