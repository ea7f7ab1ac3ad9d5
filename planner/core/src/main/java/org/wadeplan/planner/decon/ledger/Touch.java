package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One stretch for which something was in a water.
 *
 * @param where {@code TOL-01 survey}, or {@code before the round}
 * @param site empty before the round
 * @param crew who had it with them; empty before the round
 * @param with the kit sets of that visit
 * @param until when it came out; for traps that stay overnight, when they were lifted
 */
public record Touch(
        String water,
        String where,
        Optional<String> site,
        Optional<String> crew,
        List<String> with,
        Instant from,
        Instant until) {

    static final String BEFORE = "before the round";

    public boolean beforeTheRound() {
        return site.isEmpty();
    }
}
