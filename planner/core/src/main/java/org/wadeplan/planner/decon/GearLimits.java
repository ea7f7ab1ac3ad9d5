package org.wadeplan.planner.decon;

import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Immersion;
import org.wadeplan.planner.round.TreatmentMode;

/** Says which treatments would harm a kind of gear, so that they are never credited on it. */
final class GearLimits {

    private GearLimits() {}

    /** Why the treatment may not be used on it; empty where nothing on record stands against it. */
    static Optional<String> bars(GearClass gear, Recipe recipe) {
        return immersion(gear, recipe)
                .or(() -> agent(gear, recipe))
                .or(() -> heat(gear, recipe))
                .or(() -> frost(gear, recipe));
    }

    private static Optional<String> immersion(GearClass gear, Recipe recipe) {
        boolean wet = recipe.mode() == TreatmentMode.SOAK
                || recipe.mode() == TreatmentMode.STEAM
                || recipe.mode() == TreatmentMode.SPRAY;
        if (!wet || gear.immersion() == Immersion.WHOLE) {
            return Optional.empty();
        }
        return Optional.of(
                gear.immersion() == Immersion.NONE
                        ? "it must not be immersed or sprayed: wipe only"
                        : "only parts of it may be immersed: wipe the rest");
    }

    private static Optional<String> agent(GearClass gear, Recipe recipe) {
        String agent = recipe.agent().toLowerCase(Locale.ROOT);
        return gear.harmedBy().stream()
                .filter(word -> agent.contains(word.toLowerCase(Locale.ROOT)))
                .findFirst()
                .map(word -> word + " harms it");
    }

    private static Optional<String> heat(GearClass gear, Recipe recipe) {
        double tempC = recipe.tempC().orElse(Double.NEGATIVE_INFINITY);
        double mostC = gear.maxTempC().orElse(Double.POSITIVE_INFINITY);
        return tempC > mostC
                ? Optional.of(
                        "it bears " + Words.number(mostC) + " °C at most, and this is " + Words.number(tempC) + " °C")
                : Optional.empty();
    }

    private static Optional<String> frost(GearClass gear, Recipe recipe) {
        return recipe.mode() == TreatmentMode.FREEZE && !gear.freezing()
                ? Optional.of("frost harms it")
                : Optional.empty();
    }
}
