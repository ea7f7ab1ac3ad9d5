package org.wadeplan.planner.files;

import static org.wadeplan.planner.files.NumberCell.quoted;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads dates, times of day and instants as ISO 8601 writes them, and shows both readings of a date that has two. */
final class DateCell {

    private static final String DATE = "a date as year-month-day, such as 2027-09-07";
    private static final String TIME = "a time of day from 00:00 to 23:59";
    private static final String INSTANT = "a date and time with its offset from UTC, such as 2027-09-08T12:00+00:00";
    private static final Pattern ISO = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern YEAR_LAST = Pattern.compile("([0-9]{1,2})[/. -]([0-9]{1,2})[/. -]([0-9]{4})");
    private static final Pattern CLOCK = Pattern.compile("([01][0-9]|2[0-3]):[0-5][0-9]");
    private static final Pattern SHORT_CLOCK = Pattern.compile("[0-9]:[0-5][0-9]");
    private static final DateTimeFormatter IN_WORDS = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    private DateCell() {}

    static Reading<LocalDate> date(String text) {
        Matcher yearLast = YEAR_LAST.matcher(text);
        if (yearLast.matches()) {
            return twoReadings(text, yearLast);
        }
        if (!ISO.matcher(text).matches()) {
            return Reading.fault("date-form", quoted(text) + " is not a date in ISO form", DATE, "write it so");
        }
        Optional<LocalDate> date = day(text.substring(0, 4), text.substring(5, 7), text.substring(8));
        if (date.isEmpty()) {
            return Reading.fault("date-impossible", quoted(text) + " is no day of the calendar", DATE, "check the day");
        }
        int year = date.get().getYear();
        return year < FIRST_YEAR || year > LAST_YEAR
                ? Reading.fault("date-impossible", quoted(text) + " has an unlikely year", DATE, "check the year")
                : Reading.of(date.get());
    }

    private static Reading<LocalDate> twoReadings(String text, Matcher parts) {
        TreeSet<LocalDate> readings = new TreeSet<>();
        Optional<LocalDate> dayFirst = day(parts.group(3), parts.group(2), parts.group(1));
        Optional<LocalDate> monthFirst = day(parts.group(3), parts.group(1), parts.group(2));
        dayFirst.ifPresent(readings::add);
        monthFirst.ifPresent(readings::add);
        if (readings.size() == 2) {
            LocalDate first = dayFirst.orElseThrow();
            LocalDate second = monthFirst.orElseThrow();
            return Reading.fault(
                    "date-ambiguous",
                    quoted(text) + " can be " + first.format(IN_WORDS) + " or " + second.format(IN_WORDS),
                    DATE,
                    "write " + first + " or " + second + ", whichever is meant");
        }
        String remedy = readings.isEmpty() ? "check the day" : "write " + readings.first();
        return Reading.fault("date-form", quoted(text) + " is not a date in ISO form", DATE, remedy);
    }

    private static Optional<LocalDate> day(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    static Reading<LocalTime> time(String text) {
        if (CLOCK.matcher(text).matches()) {
            return Reading.of(LocalTime.parse(text));
        }
        String remedy = SHORT_CLOCK.matcher(text).matches() ? "write 0" + text : "write hours, a colon and minutes";
        return Reading.fault("time-form", quoted(text) + " is not a time of day as HH:MM", TIME, remedy);
    }

    static Reading<Instant> instant(String text) {
        try {
            return Reading.of(OffsetDateTime.parse(text).toInstant());
        } catch (DateTimeParseException notWithOffset) {
            return lacksOffset(text)
                    ? Reading.fault(
                            "offset-missing",
                            quoted(text) + " lacks its offset from UTC",
                            INSTANT,
                            "add the offset that holds there on that day, such as +00:00 or +01:00")
                    : Reading.fault(
                            "instant-form",
                            quoted(text) + " is not a date and time in ISO form",
                            INSTANT,
                            "write the date, a T, the time and the offset");
        }
    }

    private static boolean lacksOffset(String text) {
        try {
            LocalDateTime.parse(text.replace(' ', 'T'));
            return true;
        } catch (DateTimeParseException otherwise) {
            return false;
        }
    }
}
