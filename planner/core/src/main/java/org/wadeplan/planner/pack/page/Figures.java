package org.wadeplan.planner.pack.page;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Numbers as the pages write them: a point, never a locale's comma, and "not known" where there is none. */
public final class Figures {

    static final String UNKNOWN = "not known";

    private Figures() {}

    /** Without trailing zeros, to at most two decimal places: {@code 6}, {@code 0.45}. */
    public static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }

    static String known(OptionalDouble value, String unit) {
        return value.isPresent() ? plain(value.getAsDouble()) + " " + unit : UNKNOWN;
    }

    static String known(OptionalInt value, String unit) {
        return value.isPresent() ? value.getAsInt() + " " + unit : UNKNOWN;
    }

    /** A sentence with its full stop. */
    static String ended(String words) {
        return words.isEmpty() || words.matches("(?s).*[.!?]") ? words : words + ".";
    }

    /** Units and signs as they are printed, where the words are made to be read aloud or typed. */
    static String printed(String words) {
        return words.replace("m2/s", "m²/s").replace("depth x speed", "depth × speed");
    }

    /** With a capital first letter. */
    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
