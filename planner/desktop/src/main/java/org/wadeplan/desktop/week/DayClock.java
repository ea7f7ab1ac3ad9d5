package org.wadeplan.desktop.week;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;

/**
 * Minutes from a day's midnight by the clock on the wall, so that bars stand where the printed times say. A bar across
 * a change of clocks is an hour longer or shorter than it lasts.
 */
record DayClock(LocalDate date, ZoneId zone) {

    int minutes(Instant at) {
        return Math.toIntExact(
                Duration.between(date.atStartOfDay(), at.atZone(zone).toLocalDateTime())
                        .toMinutes());
    }

    /** {@code 08:30}; past midnight {@code 00:20 next day}. */
    static String words(int minutes) {
        int ofDay = Math.floorMod(minutes, 1440);
        return String.format(Locale.ROOT, "%02d:%02d", ofDay / 60, ofDay % 60) + (minutes >= 1440 ? " next day" : "");
    }
}
