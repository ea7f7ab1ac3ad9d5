package org.wadeplan.planner.decon.drying;

/**
 * Moist air at sea level. Wet bulb by the empirical fit of Stull 2011, which is within about 1 degree between 5 and 99 percent
 * humidity; saturation vapour pressure by the Magnus formula over water with the constants of WMO guide no. 8.
 */
public final class Psychrometry {

    public static final String SOURCE =
            "Stull 2011, J. Appl. Meteorol. Climatol. 50:2267; Magnus formula, WMO guide no. 8 (both from memory)";

    private static final double PRESSURE_HPA = 1013.25;
    private static final double WATER_TO_AIR = 0.622;
    private static final double LEAST_FITTED_PCT = 5;
    private static final double MOST_FITTED_PCT = 99;

    private Psychrometry() {}

    /**
     * The temperature of a wet surface in moving air, degrees C, never above {@code airC}.
     *
     * @param airC air temperature, degrees C, -20 to 50
     * @param humidityPct relative humidity, 0 to 100; outside 5 to 99 the nearer of these counts
     */
    public static double wetBulbC(double airC, double humidityPct) {
        check(airC, humidityPct);
        double pct = Math.min(MOST_FITTED_PCT, Math.max(LEAST_FITTED_PCT, humidityPct));
        double fitted = airC * Math.atan(0.151977 * Math.sqrt(pct + 8.313659))
                + Math.atan(airC + pct)
                - Math.atan(pct - 1.676331)
                + 0.00391838 * Math.pow(pct, 1.5) * Math.atan(0.023101 * pct)
                - 4.686035;
        return Math.min(airC, fitted);
    }

    /** Kilograms of water vapour for each kilogram of dry air. */
    static double humidityRatio(double airC, double humidityPct) {
        double vapourHpa = saturationHpa(airC) * humidityPct / 100;
        return WATER_TO_AIR * vapourHpa / (PRESSURE_HPA - vapourHpa);
    }

    private static double saturationHpa(double tempC) {
        return 6.112 * Math.exp(17.62 * tempC / (243.12 + tempC));
    }

    static void check(double airC, double humidityPct) {
        if (!(airC >= -20 && airC <= 50)) {
            throw new IllegalArgumentException("Air temperature must lie between -20 and 50 degrees C: " + airC);
        }
        if (!(humidityPct >= 0 && humidityPct <= 100)) {
            throw new IllegalArgumentException("Humidity must lie between 0 and 100 percent: " + humidityPct);
        }
    }
}
