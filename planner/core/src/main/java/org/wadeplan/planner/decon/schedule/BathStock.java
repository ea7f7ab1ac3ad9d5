package org.wadeplan.planner.decon.schedule;

import java.time.LocalDate;
import java.util.List;

/**
 * What the week's baths take of one product, against the store.
 *
 * @param kind the store's word for it, or the agent where the store has none
 * @param unit kg or L
 * @param needed of the whole week
 * @param inDate in the store and in date on the first day that needs it, old stock at what still counts of it
 * @param outOfDate in the store and out of date by then
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
        double shortBy,
        List<Day> days,
        List<OptionalClean> optional,
        double neededWithout,
        double shortByWithout) {

    /**
     * One day's use.
     *
     * @param baths how many are made up
     * @param shortBy what is missing that day
     */
    public record Day(LocalDate day, int baths, double needed, double shortBy) {}
}
