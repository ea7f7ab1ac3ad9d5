package org.wadeplan.planner.decon.schedule;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * The cleaning of one kit set by the clock.
 *
 * @param day the crew-day that it belongs to, which may have begun before midnight
 * @param asked when it was to start
 * @param people how many people it keeps busy until {@code crewFree}
 * @param waitedForPeopleMin minutes after {@code asked} before somebody was free
 * @param crewFree when they are free again
 * @param released when the last step ends
 */
public record BenchTask(
        String kitSet,
        String crew,
        LocalDate day,
        List<String> fromWaters,
        Instant asked,
        int people,
        int waitedForPeopleMin,
        List<BenchStep> steps,
        Instant crewFree,
        Instant released) {

    public Instant start() {
        return steps.isEmpty() ? asked : steps.get(0).start();
    }

    /** Minutes lost to people and places that were busy. */
    public int waitedMin() {
        return waitedForPeopleMin
                + steps.stream().mapToInt(BenchStep::waitedMin).sum();
    }

    /** How much earlier this one is released than another plan of the same cleaning, minutes; negative where later. */
    public int earlierThan(BenchTask other) {
        return Math.toIntExact(Duration.between(released, other.released()).toMinutes());
    }
}
