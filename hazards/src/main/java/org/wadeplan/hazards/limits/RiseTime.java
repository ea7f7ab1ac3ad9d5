package org.wadeplan.hazards.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How soon a stream can rise after rain upstream. All three formulas describe the time of concentration of a design
 * storm; they spread by a factor of three for one small basin, so the answer for a crew is a warning, never a time in
 * which they may stay.
 */
public final class RiseTime {

    public static final String SOURCE =
            "Kirpich 1940; Bransby Williams 1922; Pilgrim and McDermott 1982, as set out by Ladson 2017";

    /** Share of the shortest estimate that is taken as the earliest credible rise; a local setting. */
    public static final double EARLY_SHARE = 0.5;

    private static final double METRES_PER_FOOT = 0.3048;

    /**
     * What is known of the catchment above the site.
     *
     * @param lengthKm longest flow path
     * @param areaKm2 catchment area
     * @param slope fall divided by length, m/m
     */
    public record Catchment(OptionalDouble lengthKm, OptionalDouble areaKm2, OptionalDouble slope) {}

    private RiseTime() {}

    /**
     * Kirpich 1940, minutes: 0.0195 L^0.77 S^-0.385. Made for small steep farm basins.
     *
     * @param lengthM flow path, above 0 to 200 000 m
     * @param slope fall over length, above 0 to 1
     */
    public static Estimate kirpichMin(double lengthM, double slope) {
        return Span.of("the Kirpich formula")
                .above("Flow length in m", lengthM, 0)
                .within("Flow length in m", lengthM, 0, 200_000)
                .above("Slope in m/m", slope, 0)
                .within("Slope in m/m", slope, 0, 1)
                .then(() -> 0.0195 * Math.pow(lengthM, 0.77) * Math.pow(slope, -0.385));
    }

    /** Kirpich 1940 as first printed, in feet: 0.0078 L^0.77 S^-0.385 minutes. */
    public static Estimate kirpichFromFeetMin(double lengthFt, double slope) {
        return kirpichMin(lengthFt * METRES_PER_FOOT, slope)
                .map(spanChecked -> 0.0078 * Math.pow(lengthFt, 0.77) * Math.pow(slope, -0.385));
    }

    /**
     * Bransby Williams 1922, minutes: 58.5 L / (A^0.1 S^0.2). The coefficient is from memory; converting the original
     * exactly gives 57.6.
     *
     * @param lengthKm main stream, above 0 to 200 km
     * @param areaKm2 catchment, above 0
     * @param slopeMPerKm above 0 to 1000
     */
    public static Estimate bransbyWilliamsMin(double lengthKm, double areaKm2, double slopeMPerKm) {
        return Span.of("the Bransby Williams formula")
                .above("Stream length in km", lengthKm, 0)
                .within("Stream length in km", lengthKm, 0, 200)
                .above("Catchment area in km2", areaKm2, 0)
                .above("Slope in m/km", slopeMPerKm, 0)
                .within("Slope in m/km", slopeMPerKm, 0, 1000)
                .then(() -> 58.5 * lengthKm / (Math.pow(areaKm2, 0.1) * Math.pow(slopeMPerKm, 0.2)));
    }

    /** Pilgrim and McDermott 1982, minutes: 0.76 A^0.38 hours, for a catchment above 0 to 1000 km2. */
    public static Estimate pilgrimMcDermottMin(double areaKm2) {
        return Span.of("the Pilgrim McDermott formula")
                .above("Catchment area in km2", areaKm2, 0)
                .within("Catchment area in km2", areaKm2, 0, 1000)
                .then(() -> 60 * 0.76 * Math.pow(areaKm2, 0.38));
    }

    /**
     * The warning for a catchment: half the shortest estimate that can be made, rounded down to 5 minutes.
     *
     * @return what to tell the crew; with nothing known, a warning without a number
     */
    public static RiseWarning earliestCredible(Catchment catchment) {
        List<Estimate> estimates = estimatesMin(catchment);
        OptionalDouble shortestMin = estimates.stream()
                .flatMapToDouble(estimate -> estimate.value().stream())
                .min();
        return shortestMin.isPresent() ? RiseWarning.from(shortestMin.getAsDouble()) : RiseWarning.unknown();
    }

    private static List<Estimate> estimatesMin(Catchment catchment) {
        List<Estimate> estimates = new ArrayList<>();
        boolean line = catchment.lengthKm().isPresent() && catchment.slope().isPresent();
        if (line) {
            double lengthKm = catchment.lengthKm().getAsDouble();
            double slope = catchment.slope().getAsDouble();
            estimates.add(kirpichMin(lengthKm * 1000, slope));
            catchment.areaKm2().ifPresent(area -> estimates.add(bransbyWilliamsMin(lengthKm, area, slope * 1000)));
        }
        catchment.areaKm2().ifPresent(area -> estimates.add(pilgrimMcDermottMin(area)));
        return estimates;
    }
}
