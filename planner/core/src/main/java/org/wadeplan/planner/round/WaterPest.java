package org.wadeplan.planner.round;

import java.time.LocalDate;

/** What is known of one pest in one water. */
public record WaterPest(String water, String pest, PestStatus status, LocalDate asOf, String source) {

    /** Anything but {@link #FREE} counts as there. */
    public enum PestStatus {
        KNOWN,
        SUSPECTED,
        UNKNOWN,
        FREE
    }
}
