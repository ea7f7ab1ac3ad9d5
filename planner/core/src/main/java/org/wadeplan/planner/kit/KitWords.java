package org.wadeplan.planner.kit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Words for kit that several answers share: kinds, quantities, days, times. */
public final class KitWords {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private KitWords() {}

    /** {@code backpack unit}. */
    public static String kind(String kind) {
        return kind.replace('-', ' ');
    }

    /** At most three decimals, none where it is whole. */
    public static String number(double value) {
        return ShortageWords.number(value);
    }

    /** {@code 2 kg}; without a unit where it is blank. */
    public static String quantity(double value, String unit) {
        return number(value) + (unit.isBlank() ? "" : " " + unit);
    }

    /** {@code Wed 8 Sep}. */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** {@code Mon, Tue, Wed}, or with dates where they lie more than a week apart. */
    public static String days(List<LocalDate> dates) {
        boolean oneWeek = dates.isEmpty()
                || dates.get(0).plusDays(6).isAfter(dates.get(dates.size() - 1))
                || dates.get(0).plusDays(6).equals(dates.get(dates.size() - 1));
        DateTimeFormatter form = oneWeek ? WEEKDAY : DAY;
        return dates.stream().map(form::format).collect(Collectors.joining(", "));
    }

    /** {@code 07:30}. */
    public static String clock(Instant time, ZoneId zone) {
        return CLOCK.format(time.atZone(zone));
    }

    /** {@code Wed 8 Sep 07:30}. */
    public static String moment(Instant time, ZoneId zone) {
        return day(time.atZone(zone).toLocalDate()) + " " + clock(time, zone);
    }
}
