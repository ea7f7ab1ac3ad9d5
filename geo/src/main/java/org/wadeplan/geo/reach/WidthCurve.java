package org.wadeplan.geo.reach;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A regional curve that guesses a stream's width from the area that drains to it: width = coefficient x area^exponent.
 *
 * <p>Coefficients differ twofold between neighbouring regions, so there is no curve unless the user gives one. Two
 * published ones: width in feet = 10.8 x square miles^0.458 (western New York), 24.0 x square miles^0.292 (east of the
 * Hudson).
 *
 * @param coefficient the width at an area of 1, in {@code widthUnit}
 * @param exponent of the area
 * @param areaUnit unit of the area in the formula
 * @param widthUnit unit of the width in the formula
 * @param areaPerUpstreamKmKm2 square kilometres assumed for each kilometre of line upstream, where no area is mapped;
 *     empty where the user did not allow that
 * @param source of the curve
 */
public record WidthCurve(
        double coefficient,
        double exponent,
        AreaUnit areaUnit,
        WidthUnit widthUnit,
        OptionalDouble areaPerUpstreamKmKm2,
        String source) {

    /** A unit of area with its size in square kilometres. */
    public enum AreaUnit {
        KM2(1),
        /** International mile squared. */
        MI2(1.609344 * 1.609344),
        HA(0.01);

        private final double km2;

        AreaUnit(double km2) {
            this.km2 = km2;
        }
    }

    /** A unit of width with its size in metres. */
    public enum WidthUnit {
        M(1),
        /** International foot. */
        FT(0.3048);

        private final double metres;

        WidthUnit(double metres) {
            this.metres = metres;
        }
    }

    /**
     * The width that the curve gives; a guess, labelled as such.
     *
     * @param mappedAreaKm2 the mapped drainage area, square kilometres; empty where the lines have none
     * @param upstreamM length of all line upstream, metres; empty where not known
     */
    public Optional<MeanWidth> width(OptionalDouble mappedAreaKm2, OptionalDouble upstreamM) {
        if (mappedAreaKm2.isPresent() && mappedAreaKm2.getAsDouble() > 0) {
            return Optional.of(at(mappedAreaKm2.getAsDouble(), "from the mapped drainage area"));
        }
        if (areaPerUpstreamKmKm2.isEmpty() || upstreamM.isEmpty() || !(upstreamM.getAsDouble() > 0)) {
            return Optional.empty();
        }
        double km2 = areaPerUpstreamKmKm2.getAsDouble() * upstreamM.getAsDouble() / 1000;
        return Optional.of(at(km2, "area guessed from the length of line upstream"));
    }

    private MeanWidth at(double km2, String areaWords) {
        double widthM = coefficient * Math.pow(km2 / areaUnit.km2, exponent) * widthUnit.metres;
        return new MeanWidth(
                widthM, String.format(Locale.ROOT, "regional curve for %.1f km2, %s; not measured", km2, areaWords));
    }
}
