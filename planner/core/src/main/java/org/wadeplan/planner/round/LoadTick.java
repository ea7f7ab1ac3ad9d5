package org.wadeplan.planner.round;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * An item or kit set ticked as loaded for a crew-day.
 *
 * @param item serial or kit set
 * @param overrideBy who let it go although it is not clean and dry or not valid, with {@code overrideReason}
 */
public record LoadTick(
        LocalDate date,
        String crew,
        String item,
        Instant tickedAt,
        String by,
        Optional<String> overrideBy,
        Optional<String> overrideReason) {}
