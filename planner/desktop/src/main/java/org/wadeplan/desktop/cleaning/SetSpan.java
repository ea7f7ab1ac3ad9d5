package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A stretch of time in which a kit set stands one way.
 *
 * @param waters touched in it, or since the last release
 * @param site where it is in the water, for a use
 * @param cause what brought it there, in the ledger's words
 * @param breach what is against the rules in coming there
 * @param spoken the whole of it in a sentence
 */
public record SetSpan(
        String kitSet,
        SetState state,
        Instant from,
        Instant to,
        List<String> waters,
        Optional<String> site,
        String cause,
        Optional<String> breach,
        String spoken) {

    public String id() {
        return kitSet + " " + state + " " + from;
    }

    /** What is written in it: the waters of a use first, because that is what people look for. */
    public String label() {
        return state == SetState.IN_USE ? String.join("+", waters) + " " + state.words() : state.words();
    }

    boolean holds(Instant moment) {
        return !moment.isBefore(from) && moment.isBefore(to);
    }
}
