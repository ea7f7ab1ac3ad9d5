package org.wadeplan.planner.pack.page;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times and dates as the pages write them: 24 hours, in the round's zone. */
public record PackClock(ZoneId zone) {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm XXX '('VV')'", Locale.ROOT);

    /** {@code 08:30} */
    public String time(Instant at) {
        return TIME.format(at.atZone(zone));
    }

    public String time(LocalTime at) {
        return TIME.format(at);
    }

    /** {@code 08:30}, or {@code 00:40 Tue 7 Sep} where the day has changed. */
    public String timeOn(LocalDate day, Instant at) {
        LocalDate date = date(at);
        return date.equals(day) ? time(at) : time(at) + " " + SHORT_DAY.format(date);
    }

    /** {@code Mon 6 Sep 2027} */
    public String day(LocalDate date) {
        return DAY.format(date);
    }

    /** {@code Mon 6 Sep} */
    public String shortDay(LocalDate date) {
        return SHORT_DAY.format(date);
    }

    /** {@code 2027-09-03 16:00 Z (Atlantic/Azores)} */
    public String moment(Instant at) {
        return MOMENT.format(at.atZone(zone));
    }

    public LocalDate date(Instant at) {
        return at.atZone(zone).toLocalDate();
    }
}
