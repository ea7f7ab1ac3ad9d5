package org.wadeplan.geo.search;

import java.util.Optional;
import org.wadeplan.geo.network.LinePlace;

/** What lines are and where they belong. */
public interface LineTraits {

    /** Nothing: every line is a stream, and all are one group. */
    LineTraits NONE = new LineTraits() {};

    /** What the line is, in the file's own word: {@code lake}; empty where nothing says. */
    default Optional<String> kind(int line) {
        return Optional.empty();
    }

    /** The water or catchment that a place belongs to, for the best of each; blank where it belongs to none. */
    default String group(LinePlace place) {
        return "";
    }
}
