package org.wadeplan.planner.decon.trace;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times and spans of a trace in words. */
public record TraceClock(ZoneId zone) {

    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** {@code Tue 7 Sep 17:20} */
    public String at(Instant time) {
        return DAY_TIME.format(time.atZone(zone));
    }

    /** {@code 17:20} */
    public String time(Instant time) {
        return TIME.format(time.atZone(zone));
    }

    /** {@code 11 h 15 min}, {@code 40 min} */
    static String span(Duration span) {
        long minutes = span.toMinutes();
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }
}
