package org.wadeplan.desktop.session;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What stands behind a day of the week: light and tide. Times of the sun are for the middle of the sites.
 *
 * @param civilDawn first light, the sun 6 degrees below the horizon; empty where that does not happen
 * @param sunset empty where the sun does not set
 * @param darkFrom when the round's own rule calls it dark
 * @param lowWaters when a tidal site can be waded, one for each low tide of the day and of the night after it
 */
public record DaySky(
        LocalDate date,
        Optional<Instant> civilDawn,
        Optional<Instant> sunset,
        Optional<Instant> darkFrom,
        List<LowWaterWindow> lowWaters) {

    /** Around one low tide. */
    public record LowWaterWindow(String place, Instant from, Instant low, Instant until) {}

    public static DaySky unknown(LocalDate date) {
        return new DaySky(date, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }
}
