package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A kind that is used up, burnt down over the days.
 *
 * @param start in date on the first day, in {@code unit}
 * @param asked what the whole week needs
 * @param days every day that needs some, in order
 * @param expires the first expiry among the lots that count
 * @param notCounted lots that do not count, each with the reason
 */
public record StockLine(
        String kind,
        String unit,
        double start,
        double asked,
        List<StockDay> days,
        Optional<LocalDate> expires,
        List<String> notCounted) {

    /**
     * One day of it.
     *
     * @param asked what the day needs
     * @param used what there was of it
     * @param left at the end of the day, in date
     */
    public record StockDay(LocalDate date, double asked, double used, double left) {}

    /** What is missing in the whole week; 0 where there is enough. */
    public double shortBy() {
        return days.stream().mapToDouble(day -> day.asked() - day.used()).sum();
    }
}
