package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments in the round's zone, as a sentence wants them. */
record ClockWords(ZoneId zone) {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    /** {@code Tue 7 Sep 17:50} */
    String at(Instant moment) {
        return MOMENT.format(moment.atZone(zone));
    }
}
