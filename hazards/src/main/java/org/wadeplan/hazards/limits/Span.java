package org.wadeplan.hazards.limits;

import java.util.Locale;
import java.util.function.DoubleSupplier;

/** Checks that inputs lie in the span of a formula, the first that does not giving the reason. */
final class Span {
    private final String formula;
    private String refusal = "";

    private Span(String formula) {
        this.formula = formula;
    }

    static Span of(String formula) {
        return new Span(formula);
    }

    /** Both ends belong to the span. */
    Span within(String input, double found, double least, double most) {
        boolean inside = found >= least && found <= most;
        if (!inside && refusal.isEmpty()) {
            refusal = String.format(
                    Locale.ROOT,
                    "%s is %s; %s covers %s to %s",
                    input,
                    PlainNumber.of(found),
                    formula,
                    PlainNumber.of(least),
                    PlainNumber.of(most));
        }
        return this;
    }

    /** The lower end does not belong to the span. */
    Span above(String input, double found, double bound) {
        boolean inside = found > bound && Double.isFinite(found);
        if (!inside && refusal.isEmpty()) {
            refusal = String.format(
                    Locale.ROOT,
                    "%s is %s; %s needs more than %s",
                    input,
                    PlainNumber.of(found),
                    formula,
                    PlainNumber.of(bound));
        }
        return this;
    }

    Estimate then(DoubleSupplier formulaValue) {
        return refusal.isEmpty() ? Estimate.known(formulaValue.getAsDouble()) : Estimate.refused(refusal);
    }
}
