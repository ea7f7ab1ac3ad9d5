package org.wadeplan.geo.io;

import java.util.Locale;

/** The kinds of line that a stream layer may hold, as the column {@code kind} names them. */
public enum LineKind {
    /** Running water in the open: a stream or river. */
    STREAM,
    /** A dug channel that carries water most of the time. */
    DITCH,
    CANAL,
    PIPE,
    /** A stretch under a road or other cover. */
    CULVERT,
    /** A line through standing water, drawn so that the network holds together. */
    LAKE,
    /** Below the tidal limit. */
    TIDAL,
    COAST;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static boolean isKnown(String word) {
        for (LineKind kind : values()) {
            if (kind.word().equalsIgnoreCase(word)) {
                return true;
            }
        }
        return false;
    }

    /** For a sentence. */
    static String words() {
        StringBuilder words = new StringBuilder();
        for (LineKind kind : values()) {
            words.append(words.length() == 0 ? "" : ", ").append(kind.word());
        }
        return words.toString();
    }
}
