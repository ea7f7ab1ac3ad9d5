package org.wadeplan.cli;

import java.math.BigDecimal;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Refuses numbers that no sum can be made of, in words that say what is allowed. */
final class SumInputs {

    private SumInputs() {}

    /** Both ends shut out. */
    static Optional<Problem> between(String option, double value, double above, double below) {
        return value > above && value < below
                ? Optional.empty()
                : Optional.of(wrong(option, value, "a number between " + plain(above) + " and " + plain(below)));
    }

    static Optional<Problem> aboveZero(String option, double value) {
        return value > 0 && !Double.isInfinite(value)
                ? Optional.empty()
                : Optional.of(wrong(option, value, "a number above 0"));
    }

    private static Problem wrong(String option, double value, String expected) {
        String found = Double.isFinite(value) ? plain(value) : Double.toString(value);
        return Problem.error(
                "wrong-use",
                SourcePlace.file(option),
                found + " is not possible here",
                expected,
                "check the value and its unit");
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
