package org.wadeplan.desktop.cleaning;

import java.util.Locale;
import org.wadeplan.desktop.words.Words;

/** How it stands with a kit set. Each has its word and its pattern. */
public enum SetState {
    /** As the store has it at the start; no cleaning of this week stands behind it. */
    CLEAN_DRY,
    IN_USE,
    /** Has been in the water and was not cleaned since. */
    DIRTY,
    TREATING,
    DRYING,
    /** By plan free for any other water from here on. */
    RELEASED,
    OUT_OF_SERVICE;

    public String words() {
        return Words.of("set." + name());
    }

    String style() {
        return "set-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
