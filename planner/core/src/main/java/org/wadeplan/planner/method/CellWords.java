package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says cells and values in words, with their units: {@code above 20 and at most 23 °C}. */
public final class CellWords {

    static final String NOT_KNOWN = "not known";

    private CellWords() {}

    /** What people call the input. */
    public static String input(TableInput input) {
        return SiteInput.named(input.name()).map(SiteInput::words).orElse(input.label());
    }

    /** The value with its unit, or that it is not known. */
    public static String value(TableInput input, Map<String, CaseValue> values) {
        return value(input, values, "");
    }

    /** The same with something between value and unit, such as an uncertainty. */
    public static String value(TableInput input, Map<String, CaseValue> values, String between) {
        return Optional.ofNullable(values.get(input.name()))
                .map(value -> value.words() + between + unit(input))
                .orElse(NOT_KNOWN);
    }

    public static String cell(TableInput input, UnaryTest test) {
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

    /** As {@link #cell}, with {@code 0 to 5 m} for a stretch that holds both its ends. */
    public static String range(TableInput input, UnaryTest test) {
        if (test instanceof UnaryTest.Numbers numbers
                && numbers.set().intervals().size() == 1
                && numbers.set().intervals().get(0).lowIncluded()
                && numbers.set().intervals().get(0).highIncluded()) {
            Interval whole = numbers.set().intervals().get(0);
            return CaseValue.plain(whole.low().orElseThrow()) + " to "
                    + CaseValue.plain(whole.high().orElseThrow()) + unit(input);
        }
        return cell(input, test);
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

    /** With a blank before it; nothing where the input has no unit. */
    public static String unit(TableInput input) {
        return SiteInput.named(input.name())
                .map(SiteInput::unit)
                .filter(unit -> !unit.isEmpty())
                .or(() -> NameUnit.of(input.name()).map(NameUnit::words))
                .map(unit -> " " + unit)
                .orElse("");
    }
}
