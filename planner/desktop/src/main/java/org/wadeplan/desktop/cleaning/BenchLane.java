package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.util.List;

/**
 * A bath, bay or tub along the week, with the kit sets that lie in it.
 *
 * @param tooMany true where these sets lie in it beyond what it holds at once
 */
public record BenchLane(String label, boolean tooMany, List<Turn> turns) {

    /** One kit set in it. */
    public record Turn(String kitSet, String task, Instant from, Instant to, String spoken) {}
}
