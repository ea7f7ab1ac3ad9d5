package org.wadeplan.desktop.cleaning;

import java.time.Duration;
import java.time.Instant;

/**
 * A contact time that somebody started. It counts from the button, not from the plan.
 *
 * @param stepId the step that it belongs to
 * @param contactMin minutes that count
 */
public record ContactTimer(String stepId, String kitSet, String step, int contactMin, Instant startedAt) {

    public Instant dueAt() {
        return startedAt.plus(Duration.ofMinutes(contactMin));
    }

    /** Seconds until the end reading is due; 0 where it is. */
    public long leftS(Instant now) {
        return Math.max(0, Duration.between(now, dueAt()).toSeconds());
    }

    /** 0 at the start, 1 where the contact time is over. */
    public double share(Instant now) {
        double of = contactMin * 60.0;
        return of <= 0
                ? 1
                : Math.min(1, Math.max(0, Duration.between(startedAt, now).toSeconds() / of));
    }

    public boolean due(Instant now) {
        return !now.isBefore(dueAt());
    }
}
