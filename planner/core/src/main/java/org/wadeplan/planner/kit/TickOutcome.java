package org.wadeplan.planner.kit;

import java.util.List;
import java.util.function.Function;
import org.wadeplan.planner.round.LoadTick;

/** What comes of a request to tick something as loaded. */
public sealed interface TickOutcome {

    /**
     * It may be written down.
     *
     * @param overridden what stood against it and was let go by name; empty where nothing did
     * @param remarks what to know all the same, such as that nobody recorded the cleaning
     */
    record Accepted(LoadTick tick, List<TickObjection> overridden, List<String> remarks) implements TickOutcome {}

    /** It stays out. */
    record Refused(List<TickObjection> objections) implements TickOutcome {

        /** True where a named person with a reason could let it go. */
        public boolean overridable() {
            return objections.stream().allMatch(one -> one.ground().overridable());
        }
    }

    /** One of two answers. */
    default <T> T fold(Function<Accepted, T> accepted, Function<Refused, T> refused) {
        if (this instanceof Accepted yes) {
            return accepted.apply(yes);
        }
        return refused.apply((Refused) this);
    }
}
