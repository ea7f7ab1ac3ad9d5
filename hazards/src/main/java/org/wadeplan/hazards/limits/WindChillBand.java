package org.wadeplan.hazards.limits;

import java.util.Arrays;

/** Steps of the wind chill index at which skin and body suffer. Source: Government of Canada wind chill index. */
public enum WindChillBand {
    UNPLEASANT(Double.POSITIVE_INFINITY, "cold; dress for it"),
    HYPOTHERMIA_IF_LONG(-10, "hypothermia after a long time without shelter"),
    FROSTBITE_10_TO_30_MIN(-28, "skin freezes in 10 to 30 minutes"),
    FROSTBITE_5_TO_10_MIN(-40, "skin freezes in 5 to 10 minutes"),
    FROSTBITE_2_TO_5_MIN(-48, "skin freezes in 2 to 5 minutes"),
    FROSTBITE_UNDER_2_MIN(-55, "skin freezes in under 2 minutes");

    private final double atOrBelowC;
    private final String words;

    WindChillBand(double atOrBelowC, String words) {
        this.atOrBelowC = atOrBelowC;
        this.words = words;
    }

    /** The band of a wind chill in degrees Celsius; the edge itself belongs to the colder band. */
    public static WindChillBand ofC(double windChillC) {
        WindChillBand found = UNPLEASANT;
        for (WindChillBand band : values()) {
            if (windChillC <= band.atOrBelowC) {
                found = band;
            }
        }
        return found;
    }

    /** The band for a wet crew: one colder, a local setting, because the index holds for dry skin only. */
    public WindChillBand wet() {
        return Arrays.stream(values())
                .filter(band -> band.atOrBelowC < atOrBelowC)
                .findFirst()
                .orElse(this);
    }

    public String words() {
        return words;
    }
}
