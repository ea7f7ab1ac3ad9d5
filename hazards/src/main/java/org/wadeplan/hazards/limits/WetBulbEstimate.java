package org.wadeplan.hazards.limits;

/**
 * A rough wet-bulb globe temperature from air temperature and humidity, for full sun and light wind.
 *
 * <p>It reads too high under cloud and at night, and knows nothing of waders and gloves, which add about 1 to 3 C.
 */
public final class WetBulbEstimate {

    public static final String SOURCE =
            "simplified wet-bulb globe formula, Australian Bureau of Meteorology (from memory); "
                    + "discussed in Lemke and Kjellstrom 2012, Industrial Health 50:267";

    private WetBulbEstimate() {}

    /**
     * Degrees Celsius.
     *
     * @param airC air temperature, 15 to 45 C; the span is a local setting around the checked values
     * @param humidityPct relative humidity, 0 to 100
     */
    public static Estimate globeC(double airC, double humidityPct) {
        return Span.of("the wet-bulb globe estimate")
                .within("Air temperature in C", airC, 15, 45)
                .within("Relative humidity in percent", humidityPct, 0, 100)
                .then(() -> 0.567 * airC + 0.393 * vapourPressureHpa(airC, humidityPct) + 3.94);
    }

    private static double vapourPressureHpa(double airC, double humidityPct) {
        return humidityPct / 100 * 6.105 * Math.exp(17.27 * airC / (237.7 + airC));
    }
}
