package org.wadeplan.planner.decon.drying;

import java.util.OptionalDouble;
import org.wadeplan.planner.round.GearClass;

/**
 * How long wet gear takes to be dry to the touch: water over evaporation, with a factor for how the material holds it.
 * Evaporation is (25 + 19 v) times the difference of humidity ratio between the surface at wet bulb and the air, kg/m2/h.
 * The waters and factors of gear are guesses until somebody weighs it wet and dry.
 */
public final class DryToTouch {

    public static final String SOURCE =
            "evaporation from a wet surface, engineering formula (from memory); waters and factors of gear: own estimate";

    /** Hung up indoors or in the lee, metres a second. */
    public static final double STILL_AIR_MS = 0.2;

    private DryToTouch() {}

    /** Grams of water that a square metre loses in an hour; 0 in saturated air. */
    public static double evaporationGM2H(double airC, double humidityPct, double windMS) {
        double wetBulbC = Psychrometry.wetBulbC(airC, humidityPct);
        double difference = Psychrometry.humidityRatio(wetBulbC, 100) - Psychrometry.humidityRatio(airC, humidityPct);
        return Math.max(0, (25 + 19 * windMS) * difference * 1000);
    }

    /** Hours at constant weather; empty where the gear's water, surface or factor is not known, or where nothing evaporates. */
    public static OptionalDouble hours(GearClass gear, double airC, double humidityPct, double windMS) {
        OptionalDouble load = loadGM2(gear);
        double rate = evaporationGM2H(airC, humidityPct, windMS);
        return load.isEmpty() || rate < 0.01 ? OptionalDouble.empty() : OptionalDouble.of(load.getAsDouble() / rate);
    }

    /** Grams to lose for each square metre, the factor counted in; empty where a part of it is not known. */
    static OptionalDouble loadGM2(GearClass gear) {
        if (gear.waterG().isEmpty()
                || gear.areaM2().isEmpty()
                || gear.dryingFactor().isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(gear.dryingFactor().getAsDouble()
                * gear.waterG().getAsDouble()
                / gear.areaM2().getAsDouble());
    }
}
