package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes a test as a cell: {@code (20..23]}, {@code "dry","pools"}, {@code -}; reading it back gives the same test. */
public final class CellText {

    private CellText() {}

    public static String of(UnaryTest test) {
        return test.fold(
                () -> "-",
                CellText::numbers,
                (texts, except) -> except && texts.isEmpty()
                        ? "-"
                        : negated(except, texts.stream().map(CellText::quoted).collect(Collectors.joining(","))),
                truths -> truths.trueAllowed() && truths.falseAllowed()
                        ? "-"
                        : truths.trueAllowed() ? "true" : truths.falseAllowed() ? "false" : "not(true,false)");
    }

    /** A value as a cell writes it. */
    public static String of(CaseValue value) {
        if (value instanceof CaseValue.Text text) {
            return quoted(text.value());
        }
        return value instanceof CaseValue.Truth truth ? Boolean.toString(truth.value()) : value.words();
    }

    private static String negated(boolean except, String list) {
        return except ? "not(" + list + ")" : list;
    }

    private static String numbers(NumberSet set) {
        if (set.isEverything()) {
            return "-";
        }
        if (set.isEmpty()) {
            return "not(<0,>=0)";
        }
        return set.intervals().stream().map(CellText::interval).collect(Collectors.joining(", "));
    }

    private static String interval(Interval interval) {
        Optional<BigDecimal> low = interval.low();
        Optional<BigDecimal> high = interval.high();
        if (low.isPresent() && high.isPresent()) {
            String from = CaseValue.plain(low.get());
            return low.equals(high)
                    ? from
                    : (interval.lowIncluded() ? "[" : "(")
                            + from
                            + ".."
                            + CaseValue.plain(high.get())
                            + (interval.highIncluded() ? "]" : ")");
        }
        return low.map(value -> (interval.lowIncluded() ? ">=" : ">") + CaseValue.plain(value))
                .orElseGet(() -> (interval.highIncluded() ? "<=" : "<") + CaseValue.plain(high.orElseThrow()));
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"';
    }
}
