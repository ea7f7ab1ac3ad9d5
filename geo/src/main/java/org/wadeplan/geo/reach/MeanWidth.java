package org.wadeplan.geo.reach;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A stream's mean wetted width and how it is known.
 *
 * @param widthM metres, above 0
 * @param basis {@code measured at the site}, {@code median of 3 past visits}, {@code regional curve, not measured}
 */
public record MeanWidth(double widthM, String basis) {

    public MeanWidth {
        if (!(widthM > 0) || !Double.isFinite(widthM)) {
            throw new IllegalArgumentException("A width is above 0 m, not " + widthM);
        }
    }

    /**
     * The best that is known: the site's own, else the median of past visits, else the regional curve.
     *
     * @param site as the site's row says, metres
     * @param pastVisitsM widths of past visits, metres, in any order
     * @param curve for the drainage area there
     */
    public static Optional<MeanWidth> best(OptionalDouble site, List<Double> pastVisitsM, Optional<MeanWidth> curve) {
        if (site.isPresent() && site.getAsDouble() > 0) {
            return Optional.of(new MeanWidth(site.getAsDouble(), "measured at the site"));
        }
        double[] past = pastVisitsM.stream().mapToDouble(each -> each).sorted().toArray();
        if (past.length > 0) {
            String visits = past.length == 1 ? "one past visit" : "median of " + past.length + " past visits";
            return Optional.of(new MeanWidth(median(past), visits));
        }
        return curve;
    }

    private static double median(double[] sorted) {
        double[] values = Arrays.copyOf(sorted, sorted.length);
        int middle = values.length / 2;
        return values.length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
    }

    /** {@code 4.2 m (measured at the site)}. */
    public String words() {
        return String.format(Locale.ROOT, "%.1f m (%s)", widthM, basis);
    }
}
