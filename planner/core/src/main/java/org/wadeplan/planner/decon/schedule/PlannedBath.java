package org.wadeplan.planner.decon.schedule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.planner.decon.BathAmount;

/**
 * One bath to make up, used for every set that lies in it that day.
 *
 * @param day the crew-day of the first set in it
 * @param agent as the round's resource names it; empty where it names none
 * @param target strength with its basis, or temperature to hold, in words
 * @param volumeL empty where the round does not say
 * @param amount of product; empty for plain hot water, and where the round says too little
 * @param startLiddedC how hot to start with the lid on, whole degrees C; empty for a cold bath
 * @param crew who makes it up
 * @param readyBy when the first set goes in
 * @param discardBy a used bath is tipped out at the end of the day
 */
public record PlannedBath(
        LocalDate day,
        BenchPlace place,
        Optional<String> agent,
        String target,
        OptionalDouble volumeL,
        Optional<BathAmount> amount,
        OptionalInt startLiddedC,
        OptionalInt startOpenC,
        String crew,
        Instant readyBy,
        Instant discardBy,
        List<Use> uses) {

    /** A set in the bath. */
    public record Use(String kitSet, String crew, Instant in, Instant out) {}

    /** What to do before the first set goes in, in words. */
    public String makeUp() {
        String hot = startLiddedC.isEmpty()
                ? ""
                : "start at " + startLiddedC.getAsInt() + " °C lidded, " + startOpenC.orElse(0) + " °C open";
        String measured = amount.map(BathAmount::words).orElse("");
        return measured.isEmpty() || hot.isEmpty() ? measured + hot : measured + "; " + hot;
    }
}
