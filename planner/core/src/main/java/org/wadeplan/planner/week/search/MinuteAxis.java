package org.wadeplan.planner.week.search;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/** Whole minutes from the start of the round's first day: elapsed time, so a change of the clocks moves nothing. */
record MinuteAxis(Instant base, ZoneId zone) {

    static MinuteAxis from(LocalDate firstDay, ZoneId zone) {
        return new MinuteAxis(firstDay.atStartOfDay(zone).toInstant(), zone);
    }

    int minute(Instant time) {
        return Math.toIntExact(ChronoUnit.MINUTES.between(base, time));
    }

    int minute(LocalDate date, LocalTime time) {
        return minute(date.atTime(time).atZone(zone).toInstant());
    }

    Instant instant(int minute) {
        return base.plus(minute, ChronoUnit.MINUTES);
    }

    /** {@code 09-07 16:05}: date and time in the round's zone, for reasons. */
    String words(int minute) {
        var local = instant(minute).atZone(zone).toLocalDateTime();
        return local.toLocalDate().toString().substring(5) + " "
                + local.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    }
}
