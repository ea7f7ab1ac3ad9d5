package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says cells and values in words, with their units: {@code above 20 and at most 23 °C}. */
final class CellWords {

    static final String NOT_KNOWN = "not known";

    private CellWords() {}

    /** What people call the input. */
    static String input(TableInput input) {
        return SiteInput.named(input.name()).map(SiteInput::words).orElse(input.label());
    }

    /** The value with its unit, or that it is not known. */
    static String value(TableInput input, Map<String, CaseValue> values) {
        return Optional.ofNullable(values.get(input.name()))
                .map(value -> value.words() + unit(input))
                .orElse(NOT_KNOWN);
    }

    static String cell(TableInput input, UnaryTest test) {
        String unit = unit(input);
        return test.fold(
                () -> "any",
                set -> set.isEmpty()
                        ? "none"
                        : set.intervals().stream()
                                .map(interval -> interval(interval, unit))
                                .collect(Collectors.joining(", or ")),
                (texts, except) -> (except ? "not " : "") + String.join(" or ", texts),
                truths -> truths.trueAllowed() ? truths.falseAllowed() ? "any" : "yes" : "no");
    }

    private static String interval(Interval interval, String unit) {
        Optional<BigDecimal> low = interval.low();
        Optional<BigDecimal> high = interval.high();
        if (low.isPresent() && low.equals(high)) {
            return "exactly " + CaseValue.plain(low.get()) + unit;
        }
        Optional<String> from =
                low.map(value -> (interval.lowIncluded() ? "at least " : "above ") + CaseValue.plain(value));
        Optional<String> until =
                high.map(value -> (interval.highIncluded() ? "at most " : "below ") + CaseValue.plain(value));
        if (from.isPresent() && until.isPresent()) {
            return from.get() + " and " + until.get() + unit;
        }
        return from.or(() -> until).map(end -> end + unit).orElse("any");
    }

    private static String unit(TableInput input) {
        return SiteInput.named(input.name())
                .map(SiteInput::unit)
                .filter(unit -> !unit.isEmpty())
                .map(unit -> " " + unit)
                .orElse("");
    }
}
