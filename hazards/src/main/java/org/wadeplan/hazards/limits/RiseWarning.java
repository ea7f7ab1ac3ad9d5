package org.wadeplan.hazards.limits;

import java.util.OptionalInt;

/**
 * The earliest time in which water could rise. It is a warning: nobody may read it as time in hand.
 *
 * @param withinMin minutes from the start of rain upstream, a multiple of 5; empty where it is not known or under 30
 * @param sentence what to say to the crew
 */
public record RiseWarning(OptionalInt withinMin, String sentence) {

    private static final int TOO_SHORT_TO_WARN_MIN = 30;

    static RiseWarning from(double shortestEstimateMin) {
        int withinMin = (int) (Math.floor(shortestEstimateMin * RiseTime.EARLY_SHARE / 5) * 5);
        if (withinMin < TOO_SHORT_TO_WARN_MIN) {
            return new RiseWarning(
                    OptionalInt.empty(), "This stream is too small to warn you. It can rise within minutes of rain.");
        }
        return new RiseWarning(
                OptionalInt.of(withinMin),
                "It could rise within " + withinMin
                        + " minutes of rain upstream, or sooner. This is a guess. Watch the stick.");
    }

    static RiseWarning unknown() {
        return new RiseWarning(OptionalInt.empty(), "How fast water rises here is not known. Watch the stick.");
    }
}
