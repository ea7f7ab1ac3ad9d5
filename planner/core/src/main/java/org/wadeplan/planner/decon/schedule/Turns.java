package org.wadeplan.planner.decon.schedule;

import java.time.Instant;
import java.util.Arrays;

/**
 * When each of several equal places, or people, is free again. Whoever comes next in the fixed order gets the one that is free
 * first, even where a later one could slip in before: so that an earlier arrival, or one more place, never makes anybody later
 * (the workload vector of Kiefer and Wolfowitz 1955 for first come, first served).
 */
final class Turns {

    private final Instant[] freeAt;

    /** @param count at least 1 */
    Turns(int count) {
        freeAt = new Instant[Math.max(1, count)];
        Arrays.fill(freeAt, Instant.MIN);
    }

    /** When the next in order can begin, not before it is there. */
    Instant next(Instant notBefore) {
        Instant first = freeAt[0];
        return first.isAfter(notBefore) ? first : notBefore;
    }

    /** Gives the place that is free first to the next in order, until then. */
    void take(Instant until) {
        freeAt[0] = until;
        Arrays.sort(freeAt);
    }
}
