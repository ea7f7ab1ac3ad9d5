package org.wadeplan.planner.effort;

import java.util.Optional;
import org.wadeplan.planner.round.ConductivityRule;

/**
 * Turns specific conductance, referred to 25 degrees C, into ambient conductivity and back. Fish and electrodes feel the
 * ambient one. The rules part company in cold water, by up to 22 per cent at 0 degrees C, so every result names its rule.
 */
public final class ConductivityConversion {

    private static final double REFERENCE_C = 25;

    private final Kind kind;
    private final double perDegree;

    private enum Kind {
        LINEAR("linear"),
        EXPONENTIAL("exponential");

        private final String word;

        Kind(String word) {
            this.word = word;
        }
    }

    /**
     * A converted conductivity.
     *
     * @param valueUsCm in uS/cm
     * @param rule the rule in words: {@code linear, 2 % per degree}
     */
    public record Converted(double valueUsCm, String rule) {}

    private ConductivityConversion(Kind kind, double perDegree) {
        this.kind = kind;
        this.perDegree = perDegree;
    }

    /** The conversion by the round's rule; empty where its name is neither "linear" nor "exponential". */
    public static Optional<ConductivityConversion> of(ConductivityRule rule) {
        return switch (rule.name()) {
            case "linear" -> Optional.of(new ConductivityConversion(Kind.LINEAR, rule.perDegree()));
            case "exponential" -> Optional.of(new ConductivityConversion(Kind.EXPONENTIAL, rule.perDegree()));
            default -> Optional.empty();
        };
    }

    /**
     * Ambient conductivity at the water's own temperature.
     *
     * @throws IllegalArgumentException where the rule has no meaning at that temperature
     */
    public Converted toAmbient(double specificUsCm, double waterTempC) {
        return new Converted(specificUsCm * ratio(waterTempC), ruleWords());
    }

    /** Specific conductance at 25 degrees C of water with this ambient conductivity and temperature. */
    public Converted toSpecific(double ambientUsCm, double waterTempC) {
        return new Converted(ambientUsCm / ratio(waterTempC), ruleWords());
    }

    /** Ambient by specific: linear 1 + a (T - 25); exponential (1 + a)^(T - 25) (Reynolds 1996 with a = 0.02). */
    private double ratio(double waterTempC) {
        double degrees = waterTempC - REFERENCE_C;
        double ratio = kind == Kind.LINEAR ? 1 + perDegree * degrees : Math.pow(1 + perDegree, degrees);
        if (!(ratio > 0) || Double.isInfinite(ratio)) {
            throw new IllegalArgumentException("No conductivity at " + waterTempC + " degrees C by " + ruleWords());
        }
        return ratio;
    }

    private String ruleWords() {
        return kind.word + ", " + Plain.number(100 * perDegree, 2) + " % per degree";
    }
}
