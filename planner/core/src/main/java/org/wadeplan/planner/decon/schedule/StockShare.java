package org.wadeplan.planner.decon.schedule;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wadeplan.planner.round.StoreItem;

/**
 * How much of a lot still counts on a day: all of it, or four fifths once the store's note says that it was opened, bought or
 * made more than six months before (default of our own; a test strip on the bath decides).
 */
final class StockShare {

    static final double OLD_STOCK_COUNTS = 0.8;
    static final int OLD_AFTER_MONTHS = 6;

    private static final Pattern SINCE = Pattern.compile("\\b(?:opened|bought|made) (\\d{4}-\\d{2})(?:-(\\d{2}))?\\b");

    private StockShare() {}

    static double of(StoreItem lot, LocalDate day) {
        return since(lot)
                        .filter(first -> first.plusMonths(OLD_AFTER_MONTHS).isBefore(day))
                        .isPresent()
                ? OLD_STOCK_COUNTS
                : 1;
    }

    /** The day that the note states; the month's first where it states only the month. */
    private static Optional<LocalDate> since(StoreItem lot) {
        Matcher matcher = SINCE.matcher(lot.stateNote().orElse("").toLowerCase(Locale.ROOT));
        if (!matcher.find()) {
            return Optional.empty();
        }
        try {
            YearMonth month = YearMonth.parse(matcher.group(1));
            String day = matcher.group(2);
            return Optional.of(month.atDay(day == null ? 1 : Integer.parseInt(day)));
        } catch (DateTimeException notADate) {
            return Optional.empty();
        }
    }
}
