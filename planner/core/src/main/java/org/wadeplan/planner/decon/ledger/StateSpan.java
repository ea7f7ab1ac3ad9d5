package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.Optional;

/**
 * A stretch for which something is in one state.
 *
 * @param until empty where the ledger knows of nothing after it
 * @param why the visit or cleaning that brought it there
 * @param breach what is against the rules in coming to this state, such as being used while it dries
 */
public record StateSpan(KitState state, Instant from, Optional<Instant> until, String why, Optional<String> breach) {

    boolean holds(Instant at) {
        return !from.isAfter(at) && until.filter(end -> !end.isAfter(at)).isEmpty();
    }
}
