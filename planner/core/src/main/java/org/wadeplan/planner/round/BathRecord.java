package org.wadeplan.planner.round;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bath that somebody made up.
 *
 * @param resource the tub or bay, an id of {@code decon_resources.csv}
 * @param strength as made up, with {@code strengthBasis}; empty for plain hot water
 * @param measuredStrength the latest reading, in the same basis, taken at {@code measuredAt}
 * @param lot of the product
 * @param discardedAt when it was tipped out; empty: still there
 */
public record BathRecord(
        String id,
        String resource,
        String agent,
        Instant madeAt,
        double volumeL,
        OptionalDouble strength,
        Optional<String> strengthBasis,
        Optional<Instant> measuredAt,
        OptionalDouble measuredStrength,
        Optional<String> lot,
        Optional<Instant> discardedAt) {

    /**
     * How long an unused closed one keeps: a default of our own. Field guidance goes from 24 hours to a week, and stops a bath
     * as soon as a reading is below its target.
     */
    public static final Duration UNUSED_KEEPS = Duration.ofDays(7);
}
