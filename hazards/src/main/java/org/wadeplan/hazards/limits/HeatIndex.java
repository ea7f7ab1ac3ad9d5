package org.wadeplan.hazards.limits;

/**
 * How hot moist air feels in the shade, after Rothfusz 1990 as published by the US National Weather Service.
 *
 * <p>Two results are kept apart. {@link #rawF} is the nine-term regression alone; the published chart for 80 to 110 F is
 * this, rounded. {@link #fullF} is the whole route of the service: a simpler formula while it stays mild, then the
 * regression with two adjustments. In the warm, very moist corner the two differ by up to 2.3 F. Full sun can add 15 F.
 */
public final class HeatIndex {

    public static final String SOURCE = "Rothfusz 1990, US National Weather Service heat index equation";

    private static final double REGRESSION_FROM_F = 80;
    private static final double HOTTEST_F = 112;
    private static final double COOLEST_F = 40;

    private HeatIndex() {}

    /**
     * The regression alone, degrees Fahrenheit.
     *
     * @param airF air temperature, 80 to 112 F: the chart starts at 80 and the last adjustment ends at 112
     * @param humidityPct relative humidity, 0 to 100
     */
    public static Estimate rawF(double airF, double humidityPct) {
        return Span.of("the heat index regression")
                .within("Air temperature in F", airF, REGRESSION_FROM_F, HOTTEST_F)
                .within("Relative humidity in percent", humidityPct, 0, 100)
                .then(() -> regressionF(airF, humidityPct));
    }

    /**
     * The whole route with its simple branch and both adjustments, degrees Fahrenheit.
     *
     * @param airF air temperature, 40 to 112 F; below 40 F a heat index has no meaning
     * @param humidityPct relative humidity, 0 to 100
     */
    public static Estimate fullF(double airF, double humidityPct) {
        return Span.of("the heat index")
                .within("Air temperature in F", airF, COOLEST_F, HOTTEST_F)
                .within("Relative humidity in percent", humidityPct, 0, 100)
                .then(() -> routeF(airF, humidityPct));
    }

    /** The whole route, degrees Celsius, for air of 4.5 to 44.4 C. */
    public static Estimate fullC(double airC, double humidityPct) {
        return fullF(toF(airC), humidityPct).map(HeatIndex::toC);
    }

    private static double routeF(double t, double r) {
        double simple = 0.5 * (t + 61 + 1.2 * (t - 68) + 0.094 * r);
        double averaged = (simple + t) / 2;
        if (averaged < REGRESSION_FROM_F) {
            return averaged;
        }
        return regressionF(t, r) - dryAdjustmentF(t, r) + moistAdjustmentF(t, r);
    }

    private static double regressionF(double t, double r) {
        return -42.379
                + 2.04901523 * t
                + 10.14333127 * r
                - 0.22475541 * t * r
                - 0.00683783 * t * t
                - 0.05481717 * r * r
                + 0.00122874 * t * t * r
                + 0.00085282 * t * r * r
                - 0.00000199 * t * t * r * r;
    }

    private static double dryAdjustmentF(double t, double r) {
        boolean applies = r < 13 && t >= 80 && t <= 112;
        return applies ? (13 - r) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17) : 0;
    }

    private static double moistAdjustmentF(double t, double r) {
        boolean applies = r > 85 && t >= 80 && t <= 87;
        return applies ? (r - 85) / 10 * ((87 - t) / 5) : 0;
    }

    private static double toF(double celsius) {
        return celsius * 9 / 5 + 32;
    }

    private static double toC(double fahrenheit) {
        return (fahrenheit - 32) * 5 / 9;
    }
}
