package org.wadeplan.planner.week;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A stretch of time in which a part of a visit must lie, from its start to its end, with what bounds it in words.
 *
 * @param opens the part starts no earlier
 * @param closes the part ends no later
 */
public record TimeWindow(Instant opens, Instant closes, String opensBecause, String closesBecause) {

    /** What lies in both, each bound with the words of whichever is tighter; empty where they do not meet. */
    public Optional<TimeWindow> and(TimeWindow other) {
        TimeWindow late = opens.isBefore(other.opens) ? other : this;
        TimeWindow soon = other.closes.isBefore(closes) ? other : this;
        return late.opens.isBefore(soon.closes)
                ? Optional.of(new TimeWindow(late.opens, soon.closes, late.opensBecause, soon.closesBecause))
                : Optional.empty();
    }

    /** The same window for a part that has something before and after the stretch that it bounds. */
    public TimeWindow widened(int beforeMin, int afterMin) {
        return new TimeWindow(
                opens.minusSeconds(60L * beforeMin), closes.plusSeconds(60L * afterMin), opensBecause, closesBecause);
    }

    public int minutes() {
        return Math.toIntExact(Duration.between(opens, closes).toMinutes());
    }
}
