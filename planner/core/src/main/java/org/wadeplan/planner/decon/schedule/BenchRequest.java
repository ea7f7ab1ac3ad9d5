package org.wadeplan.planner.decon.schedule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.wadeplan.planner.decon.DeconStep;

/**
 * A cleaning that wants a place.
 *
 * @param day the crew-day that it belongs to
 * @param crewSize people of that crew that day, at least 1
 * @param start when it is to start, not earlier
 * @param earliest when set and crew are both at the depot, at most {@code start}
 */
public record BenchRequest(
        String kitSet,
        String crew,
        LocalDate day,
        int crewSize,
        List<String> fromWaters,
        Instant start,
        Instant earliest,
        List<DeconStep> steps) {

    /** The same, started as soon as set and crew are there. */
    BenchRequest asSoonAsThere() {
        return new BenchRequest(kitSet, crew, day, crewSize, fromWaters, earliest, earliest, steps);
    }
}
