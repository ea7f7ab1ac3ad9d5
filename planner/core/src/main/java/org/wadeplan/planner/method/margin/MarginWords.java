package org.wadeplan.planner.method.margin;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.CellWords;
import org.wadeplan.planner.method.TableInput;

/** Margins in words. */
public final class MarginWords {

    private static final double FULL = 100;

    /** In standard uncertainties; farther off a limit is rarely crossed. */
    private static final double FAR = 2.5;

    private MarginWords() {}

    /** {@code +1 µS/cm}, {@code more than +0.06 m}, {@code any less} where the value stands at the limit. */
    static String change(TableInput input, BigDecimal change, boolean reached) {
        if (change.signum() == 0) {
            return "by any amount";
        }
        String sign = change.signum() > 0 ? "+" : "";
        String amount = sign + CaseValue.plain(change) + CellWords.unit(input);
        return reached ? amount : "more than " + amount;
    }

    /** {@code more than +0.06 m (0.75 standard uncertainties) → TRAP} */
    public static String flip(Flip flip) {
        String size = flip.uncertainties()
                .map(times -> String.format(Locale.ROOT, " (%.2f times its uncertainty)", times))
                .orElse("");
        return flip.words() + size + " gives " + flip.outcome();
    }

    /** The chances as a crew says them. */
    public static String chances(SiteMargin margin) {
        return margin.chances().stream()
                .map(one -> one.outcome() + " " + percent(one.chance()))
                .collect(Collectors.joining(", "));
    }

    /** {@code 65 %}; never a round 0 or 100 for what is only nearly so. */
    static String percent(double chance) {
        if (chance <= 0 || chance >= 1) {
            return chance <= 0 ? "0 %" : "100 %";
        }
        if (chance < 0.01) {
            return "under 1 %";
        }
        return chance > 0.99 ? "over 99 %" : String.format(Locale.ROOT, "%.0f %%", chance * FULL);
    }

    /** What the margins mean for the packing. */
    public static List<String> advice(SiteMargin margin) {
        List<String> lines = new ArrayList<>();
        List<String> others = margin.chances().stream()
                .filter(one -> !one.outcome().equals(margin.outcome()) && one.chance() >= 0.01)
                .map(one -> one.outcome() + " " + percent(one.chance()))
                .toList();
        if (!others.isEmpty()) {
            List<String> close = margin.inputs().stream()
                    .filter(input -> input.flips().stream()
                            .anyMatch(flip -> flip.uncertainties().orElse(FAR) < FAR))
                    .map(InputMargin::words)
                    .toList();
            lines.add("Be ready for " + String.join(", ", others) + ": carry what it needs"
                    + (close.isEmpty() ? "." : ", or check before loading: " + String.join("; ", close) + "."));
        }
        return lines;
    }
}
