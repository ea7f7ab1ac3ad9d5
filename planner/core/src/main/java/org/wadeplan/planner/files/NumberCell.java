package org.wadeplan.planner.files;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads numbers with a decimal point and nothing else: no thousands mark, no unit, no digits of another script. */
final class NumberCell {

    private static final Pattern DECIMAL = Pattern.compile("[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]{1,3})?");
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?[0-9]*,[0-9]+");
    private static final Pattern MAYBE_THOUSANDS = Pattern.compile("[+-]?[1-9][0-9]{0,2},[0-9]{3}");
    private static final Set<String> NO_NUMBER =
            Set.of("nan", "inf", "infinity", "-inf", "-infinity", "+inf", "+infinity");

    private NumberCell() {}

    static Reading<Double> decimal(String text, Range range) {
        String expected = range.words("a number");
        if (WITH_COMMA.matcher(text).matches()) {
            return Reading.fault("decimal-comma", comma(text), expected, "");
        }
        if (NO_NUMBER.contains(text.toLowerCase(Locale.ROOT))) {
            return Reading.fault("not-finite", quoted(text) + " stands for no number", expected, "write the number");
        }
        if (!DECIMAL.matcher(text).matches()) {
            return Reading.fault(
                    "not-a-number",
                    quoted(text) + " is not a number",
                    expected,
                    "write digits with a decimal point and without a unit");
        }
        double value = Double.parseDouble(text);
        return range.holds(value) ? Reading.of(value) : outside(text, value < range.min(), expected);
    }

    static Reading<Integer> integer(String text, Range range) {
        String expected = range.words("a whole number");
        Reading<Double> number = decimal(text, range);
        if (number.fault().isPresent()) {
            Fault fault = number.fault().get();
            return Reading.fault(fault.code(), fault.found(), expected, fault.remedy());
        }
        double value = number.value().orElseThrow();
        return value == Math.rint(value)
                ? Reading.of((int) value)
                : Reading.fault("not-whole", quoted(text) + " is not a whole number", expected, "round it");
    }

    private static String comma(String text) {
        String withPoint = text.replace(',', '.');
        String thousands = MAYBE_THOUSANDS.matcher(text).matches()
                ? ", or " + text.replace(",", "") + " where the comma parts thousands"
                : "";
        return quoted(text) + " has a comma; use a point: " + withPoint + thousands;
    }

    private static <T> Reading<T> outside(String text, boolean below, String expected) {
        return Reading.fault(
                "out-of-range",
                quoted(text) + (below ? " is too low" : " is too high"),
                expected,
                "check the value and its unit");
    }

    static String quoted(String text) {
        String brief = text.length() > 60 ? text.substring(0, 57) + "..." : text;
        return "\"" + brief + "\"";
    }
}
