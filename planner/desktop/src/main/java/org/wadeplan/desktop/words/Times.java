package org.wadeplan.desktop.words;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates and times as people read them; always 24 hours, always with the weekday. */
public final class Times {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private Times() {}

    /** {@code Mon 6 Sep} */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** {@code 08:30} */
    public static String clock(Instant at, ZoneId zone) {
        return CLOCK.format(at.atZone(zone));
    }

    /** {@code Tue 06:15} */
    public static String dayClock(Instant at, ZoneId zone) {
        return DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH).format(at.atZone(zone));
    }

    /** {@code 45 min}, {@code 5 h}, {@code 5 h 10 min} */
    public static String minutes(int minutes) {
        if (minutes < 60) {
            return minutes + " min";
        }
        return minutes % 60 == 0 ? minutes / 60 + " h" : minutes / 60 + " h " + minutes % 60 + " min";
    }
}
