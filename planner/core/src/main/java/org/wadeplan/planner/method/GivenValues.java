package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads values as a person types them: {@code max_depth_m=0.9}, {@code wet_state=flowing}, {@code night_access=yes}. */
public final class GivenValues {

    private GivenValues() {}

    /** The values by input, or every fault in them at once. */
    public static Checked<Map<String, CaseValue>> of(DecisionTable table, List<String> given) {
        Map<String, CaseValue> values = new LinkedHashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (String one : given) {
            int sign = one.indexOf('=');
            String name = sign < 0 ? one : one.substring(0, sign).strip();
            Optional<TableInput> input = table.input(name);
            if (sign < 0 || input.isEmpty()) {
                problems.add(fault(
                        one,
                        sign < 0 ? "it has no =" : "the table has no input \"" + name + "\"",
                        table.inputs().stream().map(TableInput::name).collect(Collectors.joining(", ")),
                        "write an input of the table, =, and its value"));
                continue;
            }
            value(input.get(), one.substring(sign + 1).strip())
                    .ifPresentOrElse(
                            value -> values.put(name, value),
                            () -> problems.add(fault(
                                    one,
                                    "this is no " + input.get().type().word(),
                                    expected(input.get().type()),
                                    "correct the value")));
        }
        return problems.isEmpty() ? Checked.of(values) : Checked.failed(problems);
    }

    private static Optional<CaseValue> value(TableInput input, String text) {
        return switch (input.type()) {
            case TEXT -> Optional.of(CaseValue.of(text.replaceAll("^\"|\"$", "")));
            case TRUTH ->
                switch (text) {
                    case "true", "yes" -> Optional.of(CaseValue.of(true));
                    case "false", "no" -> Optional.of(CaseValue.of(false));
                    default -> Optional.empty();
                };
            case NUMBER ->
                text.matches("-?\\d{1,20}(\\.\\d{1,20})?")
                        ? Optional.of(new CaseValue.Quantity(new BigDecimal(text)))
                        : Optional.empty();
        };
    }

    private static String expected(ValueType type) {
        return switch (type) {
            case NUMBER -> "a number with a decimal point, such as 0.74";
            case TRUTH -> "true or false";
            case TEXT -> "a word";
        };
    }

    private static Problem fault(String given, String found, String expected, String remedy) {
        return Problem.error("value-not-read", SourcePlace.file(given), found, expected, remedy);
    }
}
