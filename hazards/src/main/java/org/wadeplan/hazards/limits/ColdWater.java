package org.wadeplan.hazards.limits;

import java.util.Locale;
import java.util.Optional;

/**
 * Bands of water temperature for people who may fall in. The edges are local settings; 15 C is where the US Coast Guard
 * Auxiliary begins to speak of cold water, and cold shock is strongest from 15 down to 10 C.
 */
public enum ColdWater {
    MILD(20),
    WATCH(15),
    COLD(10),
    VERY_COLD(5),
    STOP(-2);

    public static final String SOURCE = "local setting; cold water under 15 C after US Coast Guard Auxiliary 2013";

    /** 1 minute to master breathing, 10 minutes of useful movement, 1 hour before passing out; common practice. */
    public static final String DRILL = "1 minute to master your breath, 10 minutes of useful movement, 1 hour awake";

    private static final double HOTTEST_C = 45;

    private final double fromC;

    ColdWater(double fromC) {
        this.fromC = fromC;
    }

    /** The band of a water temperature, -2 to 45 C; empty outside, where the reading itself is in doubt. */
    public static Optional<ColdWater> ofC(double waterC) {
        if (!(waterC >= STOP.fromC && waterC <= HOTTEST_C)) {
            return Optional.empty();
        }
        for (ColdWater band : values()) {
            if (waterC >= band.fromC) {
                return Optional.of(band);
            }
        }
        return Optional.empty();
    }

    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
