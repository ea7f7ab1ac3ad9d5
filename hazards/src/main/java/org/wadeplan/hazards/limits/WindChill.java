package org.wadeplan.hazards.limits;

/**
 * How cold wind feels on dry, bare skin: the North American index of 2001.
 *
 * <p>The Celsius and Fahrenheit forms were rounded separately when published and differ by a few hundredths, so each
 * is kept as printed and neither is converted from the other. Wet clothes void the index: see {@link WindChillBand#wet}.
 */
public final class WindChill {

    public static final String SOURCE = "Environment Canada and US National Weather Service, wind chill index 2001";

    private WindChill() {}

    /**
     * Degrees Celsius.
     *
     * @param airC air temperature, -50 to 10 C: the span of the Canadian table and the index's upper end
     * @param windKmH wind at 10 m height, more than 4.8 km/h
     */
    public static Estimate chillC(double airC, double windKmH) {
        return Span.of("wind chill")
                .within("Air temperature in C", airC, -50, 10)
                .above("Wind in km/h", windKmH, 4.8)
                .then(() -> {
                    double power = Math.pow(windKmH, 0.16);
                    return 13.12 + 0.6215 * airC - 11.37 * power + 0.3965 * airC * power;
                });
    }

    /**
     * Degrees Fahrenheit.
     *
     * @param airF air temperature, -58 to 50 F
     * @param windMph wind at 10 m (33 ft) height, more than 3 mph
     */
    public static Estimate chillF(double airF, double windMph) {
        return Span.of("wind chill")
                .within("Air temperature in F", airF, -58, 50)
                .above("Wind in mph", windMph, 3)
                .then(() -> {
                    double power = Math.pow(windMph, 0.16);
                    return 35.74 + 0.6215 * airF - 35.75 * power + 0.4275 * airF * power;
                });
    }
}
