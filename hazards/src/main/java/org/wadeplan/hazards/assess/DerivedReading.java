package org.wadeplan.hazards.assess;

import java.util.OptionalDouble;
import org.wadeplan.hazards.limits.Estimate;
import org.wadeplan.hazards.limits.HeatIndex;
import org.wadeplan.hazards.limits.WadingLimit.Water;
import org.wadeplan.hazards.limits.WetBulbEstimate;
import org.wadeplan.hazards.limits.WindChill;
import org.wadeplan.hazards.register.Attribute;

/** Numbers that nobody measures but that follow from measured ones. */
final class DerivedReading {

    private static final double WORST_HUMIDITY_PCT = 100;
    private static final double COLDEST_FOR_HEAT_C = 15;
    private static final double WARMEST_FOR_CHILL_C = 10;
    private static final double CALM_KMH = 4.8;

    private DerivedReading() {}

    static Reading of(Attribute attribute, Conditions conditions) {
        return switch (attribute) {
            case DEPTH_VELOCITY_M2S -> product(conditions);
            case HEAT_INDEX_C -> heat(conditions, HeatIndex::fullC);
            case WET_BULB_GLOBE_C -> heat(conditions, WetBulbEstimate::globeC);
            case WIND_CHILL_C -> windChill(conditions);
            default -> new Reading.Unknown(attribute.words());
        };
    }

    private interface HeatFormula {
        Estimate of(double airC, double humidityPct);
    }

    private static Reading product(Conditions conditions) {
        OptionalDouble product = new Water(
                        conditions.given(Attribute.DEPTH_M),
                        conditions.given(Attribute.VELOCITY_MS),
                        OptionalDouble.empty())
                .productM2S();
        return product.isPresent()
                ? new Reading.Known(product.getAsDouble(), "deepest times fastest")
                : new Reading.Unknown(Attribute.DEPTH_VELOCITY_M2S.words());
    }

    private static Reading heat(Conditions conditions, HeatFormula formula) {
        OptionalDouble airC = conditions.given(Attribute.AIR_TEMP_C);
        if (airC.isEmpty()) {
            return new Reading.Unknown("air temperature");
        }
        if (airC.getAsDouble() < COLDEST_FOR_HEAT_C) {
            return new Reading.DoesNotArise("air under 15 C");
        }
        OptionalDouble humidityPct = conditions.given(Attribute.HUMIDITY_PCT);
        String note = humidityPct.isPresent() ? "from air and humidity" : "humidity not known, counted as 100 %";
        return formula.of(airC.getAsDouble(), humidityPct.orElse(WORST_HUMIDITY_PCT))
                .fold(
                        known -> new Reading.Known(rounded(known.number()), note),
                        refused -> new Reading.Unknown(refused.reason()));
    }

    private static Reading windChill(Conditions conditions) {
        OptionalDouble airC = conditions.given(Attribute.AIR_TEMP_C);
        OptionalDouble windKmH = conditions.given(Attribute.WIND_KMH);
        if (airC.isEmpty()) {
            return new Reading.Unknown("air temperature");
        }
        if (airC.getAsDouble() > WARMEST_FOR_CHILL_C) {
            return new Reading.DoesNotArise("air over 10 C");
        }
        if (windKmH.isEmpty()) {
            return new Reading.Unknown("wind");
        }
        if (windKmH.getAsDouble() <= CALM_KMH) {
            return new Reading.Known(airC.getAsDouble(), "calm: the air itself");
        }
        return WindChill.chillC(airC.getAsDouble(), windKmH.getAsDouble())
                .fold(
                        known -> new Reading.Known(rounded(known.number()), "from air and wind"),
                        refused -> new Reading.Unknown(refused.reason()));
    }

    private static double rounded(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
