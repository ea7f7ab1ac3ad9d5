package org.wadeplan.planner.permission;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * What permits and consents say of one site, method and day.
 *
 * @param blocks why not, each in a sentence; empty where nothing was found against it
 * @param awaiting what is still to be granted, each in a sentence: such a visit may be planned, and every page of it says
 *     NOT AUTHORISED
 * @param conditions what must be done or minded, each in a sentence
 * @param accessFrom people may be on the land from this time
 * @param accessUntil people must be off the land by this time
 */
public record Permission(
        String site,
        String method,
        LocalDate date,
        List<String> blocks,
        List<String> awaiting,
        List<String> conditions,
        Optional<LocalTime> accessFrom,
        Optional<LocalTime> accessUntil) {

    /** Such a visit is never placed. */
    public boolean blocked() {
        return !blocks.isEmpty();
    }

    /** True where nothing was found against it and nothing is awaited. */
    public boolean authorised() {
        return blocks.isEmpty() && awaiting.isEmpty();
    }
}
