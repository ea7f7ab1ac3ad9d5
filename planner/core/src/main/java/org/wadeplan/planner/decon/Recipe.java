package org.wadeplan.planner.decon;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * One way of applying one treatment. Evidence holds for exactly this agent, strength, temperature and mode: a row about a
 * soak says nothing of a spray, and a row at 60 °C nothing of 50 °C.
 *
 * @param strength with {@code strengthBasis}
 * @param tempC temperature to hold, degrees C
 */
public record Recipe(
        String treatment,
        String agent,
        AgentKind kind,
        TreatmentMode mode,
        OptionalDouble strength,
        Optional<String> strengthBasis,
        OptionalDouble tempC) {

    /** By name, then mode, then the rest, so that every list comes out in the same order. */
    public static final Comparator<Recipe> ORDER = Comparator.comparing(Recipe::treatment)
            .thenComparing(Recipe::mode)
            .thenComparing(Recipe::agent)
            .thenComparingDouble(recipe -> recipe.tempC().orElse(Double.NEGATIVE_INFINITY))
            .thenComparingDouble(recipe -> recipe.strength().orElse(Double.NEGATIVE_INFINITY))
            .thenComparing(recipe -> recipe.strengthBasis().orElse(""));

    static Recipe of(Treatment row) {
        return new Recipe(
                row.id(), row.agent(), AgentKind.of(row), row.mode(), row.strength(), row.strengthBasis(), row.tempC());
    }

    /** What must be reached and measured, in words: {@code 60 °C}, {@code 20 g/L product}; empty where nothing is. */
    public Optional<String> target() {
        String words = (strengthWords() + " " + tempWords()).strip();
        return words.isEmpty() ? Optional.empty() : Optional.of(words);
    }

    private String strengthWords() {
        return strength.isEmpty()
                ? ""
                : Words.number(strength.getAsDouble()) + " " + strengthBasis.orElse("(basis not stated)");
    }

    private String tempWords() {
        if (tempC.isEmpty()) {
            return "";
        }
        String joint = strength.isEmpty() ? "" : "at ";
        return joint + Words.number(tempC.getAsDouble()) + " °C";
    }

    /** The treatment and how it is applied: {@code hot-dip-60 (soak)}. */
    public String words() {
        return treatment + " (" + mode.name().toLowerCase(Locale.ROOT) + ")";
    }
}
