package org.wadeplan.hazards.limits;

import java.util.Locale;

/** Bands of the heat index. Source: US National Weather Service bands of 80, 90, 103 and 125 F. */
public enum HeatBand {
    BELOW_BANDS(Double.NEGATIVE_INFINITY),
    CAUTION(80),
    EXTREME_CAUTION(90),
    DANGER(103),
    EXTREME_DANGER(125);

    private final double fromF;

    HeatBand(double fromF) {
        this.fromF = fromF;
    }

    /** The band of a heat index in degrees Fahrenheit; the lower edge belongs to the band. */
    public static HeatBand ofF(double heatIndexF) {
        HeatBand found = BELOW_BANDS;
        for (HeatBand band : values()) {
            if (heatIndexF >= band.fromF) {
                found = band;
            }
        }
        return found;
    }

    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
