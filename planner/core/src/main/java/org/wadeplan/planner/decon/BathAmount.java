package org.wadeplan.planner.decon;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How much product goes into a bath.
 *
 * @param quantity in {@code unit}; empty where it hangs on what the bottle holds, which no table of the round says
 * @param unit kg or L of product; blank where there is no quantity
 * @param words what to weigh out or measure, for the sheet
 */
public record BathAmount(OptionalDouble quantity, String unit, String words) {

    /** Strengths of products on sale that the words work an example for, per cent of the active agent. */
    private static final double[] BLEACHES_PCT = {4, 5, 6};

    private static final double[] CONCENTRATES_PCT = {10, 12.5, 20};

    /** Empty where the strength's basis is none that arithmetic can be done with. */
    public static Optional<BathAmount> of(double strength, String basis, double volumeL) {
        String lower = basis.toLowerCase(Locale.ROOT).strip();
        boolean active = Stream.of("active", "available", "naocl", "iodine").anyMatch(lower::contains);
        if (lower.startsWith("g/l") && !active) {
            return Optional.of(powder(Dilution.powderKg(volumeL, strength), volumeL));
        }
        if (lower.startsWith("ml/l") && !active) {
            return Optional.of(liquid(strength * volumeL / 1000, volumeL));
        }
        if (lower.startsWith("mg/l")) {
            return Optional.of(bottle(strength, basis, volumeL));
        }
        if (lower.startsWith("%") && active) {
            return Optional.of(bottle(strength * 10_000, basis, volumeL));
        }
        if (lower.startsWith("%") && (lower.contains("salt") || lower.contains("w/v"))) {
            return Optional.of(powder(Dilution.powderKg(volumeL, strength * 10), volumeL));
        }
        return lower.startsWith("%") && lower.contains("product")
                ? Optional.of(liquid(Dilution.productMl(volumeL, strength) / 1000, volumeL))
                : Optional.empty();
    }

    private static BathAmount powder(double kg, double volumeL) {
        return new BathAmount(
                OptionalDouble.of(kg), "kg", Words.number(kg) + " kg made up to " + Words.number(volumeL) + " L");
    }

    private static BathAmount liquid(double litres, double volumeL) {
        return new BathAmount(
                OptionalDouble.of(litres),
                "L",
                Words.number(litres) + " L of product made up to " + Words.number(volumeL) + " L");
    }

    private static BathAmount bottle(double targetMgL, String basis, double volumeL) {
        boolean bleach = basis.contains("chlorine") || basis.contains("NaOCl");
        StringBuilder words = new StringBuilder("read the bottle: for " + Words.number(volumeL) + " L");
        for (double pct : bleach ? BLEACHES_PCT : CONCENTRATES_PCT) {
            if (targetMgL < pct * 10_000) {
                words.append(String.format(
                        Locale.ROOT,
                        "%s %.0f mL of a %s %% one",
                        words.indexOf("mL") < 0 ? "" : ",",
                        Dilution.stockMl(volumeL, targetMgL, pct),
                        Words.number(pct)));
            }
        }
        return new BathAmount(OptionalDouble.empty(), "", words + " (" + basis + ")");
    }
}
