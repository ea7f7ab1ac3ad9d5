package org.wadeplan.desktop.week;

import java.util.Locale;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.week.ActivityKind;

/** What a bar stands for: what a crew does, or how it stands with a kit set. */
public enum BarKind {
    LOAD,
    TRAVEL,
    VISIT,
    RINSE,
    DECON,
    WAIT,
    UNLOAD,
    /** The kit set is in the water. */
    USED,
    /** Has been in the water and was not cleaned since. */
    DIRTY,
    TREATING,
    DRYING,
    /** From here on it may go to any water. */
    RELEASED;

    static BarKind of(ActivityKind kind) {
        return valueOf(kind.name());
    }

    /** The state in a word or two. */
    public String words() {
        return Words.of("bar." + name().toLowerCase(Locale.ROOT));
    }

    String style() {
        return "bar-" + name().toLowerCase(Locale.ROOT);
    }
}
