package org.wadeplan.planner.round;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One line of the week as people have agreed it among themselves: a part of a visit, or the cleaning of a kit set.
 *
 * @param date day on which the crew-day begins
 * @param start when the part or the cleaning starts
 * @param site with {@code part} for a visit; both empty for a cleaning
 * @param kitSets what goes into the water, or the one set that is cleaned
 */
public record AgreedTask(
        LocalDate date,
        String crew,
        Instant start,
        Optional<String> site,
        Optional<VisitPart> part,
        List<String> kitSets,
        Optional<String> note) {

    /** Whether it is the cleaning of a kit set. */
    public boolean cleaning() {
        return site.isEmpty();
    }
}
