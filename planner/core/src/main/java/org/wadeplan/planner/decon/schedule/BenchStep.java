package org.wadeplan.planner.decon.schedule;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * One step of a cleaning by the clock.
 *
 * @param crewBusy true where somebody stands by it; false where it runs alone
 * @param place where, if it needs a shared place
 * @param target strength and temperature to reach, in words
 * @param waitedMin minutes that the set waited before it because the place was taken
 */
public record BenchStep(
        String step,
        String label,
        Instant start,
        Instant end,
        boolean crewBusy,
        Optional<BenchPlace> place,
        Optional<String> target,
        int waitedMin) {

    public int minutes() {
        return Math.toIntExact(Duration.between(start, end).toMinutes());
    }
}
