package org.wadeplan.planner.decon.schedule;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.wadeplan.planner.decon.Words;

/**
 * What the week's baths take of one product, against the store.
 *
 * @param kind the store's word for it, or the agent where the store has none
 * @param unit kg or L
 * @param needed of the whole week
 * @param inDate in the store and in date on the first day that needs it, old stock at what still counts of it
 * @param outOfDate in the store and out of date by then
 * @param oldCountsFor what a unit of the oldest lot in date still counts for, 0 to 1
 * @param shortBy what is missing, day after day; 0 where it lasts
 * @param days each day that uses some
 * @param optional cleanings that could be left out and would save some
 * @param neededWithout of the whole week without those
 * @param shortByWithout what would still be missing
 */
public record BathStock(
        String kind,
        String unit,
        double needed,
        double inDate,
        double outOfDate,
        double oldCountsFor,
        double shortBy,
        List<Day> days,
        List<OptionalClean> optional,
        double neededWithout,
        double shortByWithout) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    /**
     * One day's use.
     *
     * @param baths how many are made up
     * @param shortBy what is missing that day
     */
    public record Day(LocalDate day, int baths, double needed, double shortBy) {}

    /** Whether it lasts, what is short from when on, and what leaving out would save: one sentence after the other. */
    public String words(ZoneId zone) {
        int baths = days.stream().mapToInt(Day::baths).sum();
        String of = " " + unit + " of " + kind;
        StringBuilder words = new StringBuilder(baths + (baths == 1 ? " bath takes " : " baths take ") + amount(needed)
                + of + "; " + amount(inDate) + " " + unit + " in date");
        if (outOfDate > 0) {
            words.append(", ")
                    .append(amount(outOfDate))
                    .append(' ')
                    .append(unit)
                    .append(" out of date");
        }
        words.append(shortBy > 0 ? ": short " + amount(shortBy) + " " + unit + from() : ".");
        if (oldCountsFor < 1) {
            words.append(" Some of it is more than six months old: it counts for ")
                    .append(amount(oldCountsFor * 100))
                    .append(" %, so weigh out more and let the strip decide.");
        }
        optional.forEach(one -> words.append(' ').append(one.words(zone)));
        if (!optional.isEmpty()) {
            words.append(" Without: ").append(amount(neededWithout)).append(' ').append(unit);
            words.append(
                    shortByWithout > 0 ? ", still short " + amount(shortByWithout) + " " + unit + "." : ", enough.");
        }
        return words.toString();
    }

    private String from() {
        return days.stream()
                .filter(day -> day.shortBy() > 0)
                .findFirst()
                .map(day -> " from " + DAY.format(day.day()) + " on.")
                .orElse(".");
    }

    private static String amount(double value) {
        return Words.number(value);
    }
}
