package org.wadeplan.hazards.limits;

/**
 * Flash-to-bang and the 30/30 rule. The tool's own stop is stricter: any thunder. Counting is no guard against the
 * first strike.
 */
public final class Lightning {

    public static final String SOURCE = "University of Missouri Extension, lightning guide: 30/30 rule";

    /** At this many seconds from flash to thunder, or fewer, everyone is in hard shelter. */
    public static final double SHELTER_AT_OR_UNDER_S = 30;

    /** Time in shelter after the last thunder; each new thunder starts it again. */
    public static final int SHELTER_AFTER_LAST_THUNDER_MIN = 30;

    private static final double LONGEST_COUNT_S = 120;

    private Lightning() {}

    /** Distance to the flash in miles by the rule of five seconds a mile, for counts of 0 to 120 s. */
    public static Estimate distanceMi(double flashToBangS) {
        return counted(flashToBangS).map(seconds -> seconds / 5);
    }

    /** Distance to the flash in kilometres in air of the given temperature, -40 to 50 C, for counts of 0 to 120 s. */
    public static Estimate distanceKm(double flashToBangS, double airC) {
        return counted(flashToBangS)
                .fold(known -> soundSpeedMS(airC).map(speedMS -> known.number() * speedMS / 1000), refused -> refused);
    }

    /** Speed of sound in dry air, m/s: 331.3 times the root of the ratio of absolute temperatures. */
    public static Estimate soundSpeedMS(double airC) {
        return Span.of("the speed of sound formula")
                .within("Air temperature in C", airC, -40, 50)
                .then(() -> 331.3 * Math.sqrt(1 + airC / 273.15));
    }

    private static Estimate counted(double flashToBangS) {
        return Span.of("flash-to-bang counting")
                .within("Flash-to-bang in s", flashToBangS, 0, LONGEST_COUNT_S)
                .then(() -> flashToBangS);
    }
}
