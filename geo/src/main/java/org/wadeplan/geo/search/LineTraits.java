package org.wadeplan.geo.search;

import java.util.Optional;

/** What the file says about whole lines. */
public interface LineTraits {

    /** Nothing: every line is a stream, and all are one group. */
    LineTraits NONE = new LineTraits() {};

    /** What the line is, in the file's own word: {@code lake}; empty where nothing says. */
    default Optional<String> kind(int line) {
        return Optional.empty();
    }

    /** The water or catchment that the line belongs to, for the best of each; blank where it belongs to none. */
    default String group(int line) {
        return "";
    }
}
