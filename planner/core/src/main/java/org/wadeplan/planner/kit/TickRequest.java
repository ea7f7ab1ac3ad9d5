package org.wadeplan.planner.kit;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Somebody wants to tick an item or kit set as loaded.
 *
 * @param item serial, lot or kit set
 * @param at when it is loaded
 * @param override who lets it go all the same, and why
 */
public record TickRequest(
        String crew, LocalDate date, String item, Instant at, String by, Optional<TickOverride> override) {

    /** A named person's decision with its reason; neither may be blank. */
    public record TickOverride(String by, String reason) {

        public TickOverride {
            if (by.isBlank() || reason.isBlank()) {
                throw new IllegalArgumentException("An override needs a name and a reason");
            }
        }
    }
}
