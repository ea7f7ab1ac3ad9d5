package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.method.TableCell;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.TableOutput;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.UnaryTest;
import org.wadeplan.planner.method.UnaryTestParser;
import org.wadeplan.planner.method.ValueType;

/** Decision tables written in a test: two numbers, a word and a truth; and a grid that holds a value of every kind. */
public final class SmallTable {

    public static final List<TableInput> INPUTS = List.of(
            new TableInput("", "depth", "depth", ValueType.NUMBER, Optional.of(cell("[0..4]", ValueType.NUMBER))),
            new TableInput("", "speed", "speed", ValueType.NUMBER, Optional.empty()),
            new TableInput("", "bed", "bed", ValueType.TEXT, Optional.of(cell("\"mud\",\"sand\"", ValueType.TEXT))),
            new TableInput("", "night", "night", ValueType.TRUTH, Optional.empty()));

    private SmallTable() {}

    /** A rule as its cells and then its output, parted by bars: {@code <1 | - | "mud" | true | A}. */
    public static DecisionTable of(HitPolicy policy, String... rules) {
        List<TableRule> rows = new ArrayList<>();
        for (int row = 0; row < rules.length; row++) {
            List<String> parts =
                    Arrays.stream(rules[row].split("\\|")).map(String::strip).toList();
            List<TableCell> cells = new ArrayList<>();
            for (int column = 0; column < INPUTS.size(); column++) {
                cells.add(cell(parts.get(column), INPUTS.get(column).type()));
            }
            rows.add(new TableRule(row + 1, "rule " + (row + 1), cells, List.of(Optional.of(parts.get(4))), ""));
        }
        TableOutput output = new TableOutput("", "method", Optional.of(ValueType.TEXT), List.of("A", "B", "C"));
        return new DecisionTable("small.dmn", "", "small", policy, INPUTS, List.of(output), rows, "0".repeat(64));
    }

    static TableCell cell(String text, ValueType type) {
        UnaryTest test = UnaryTestParser.parse(text, type).fold((read, doubts) -> read, fault -> {
            throw new IllegalArgumentException(text + ": " + fault);
        });
        return new TableCell(text, test);
    }

    /** Every possible case as far as limits at 1, 2 and 3 can tell them apart, the limits themselves among them. */
    static List<Map<String, CaseValue>> grid() {
        List<Map<String, CaseValue>> cases = new ArrayList<>();
        for (double depth = 0; depth <= 4; depth += 0.5) {
            for (double speed = 0.5; speed <= 3.5; speed += 0.5) {
                for (String bed : List.of("mud", "sand")) {
                    for (boolean night : new boolean[] {false, true}) {
                        cases.add(Map.of(
                                "depth", CaseValue.of(depth),
                                "speed", CaseValue.of(speed),
                                "bed", CaseValue.of(bed),
                                "night", CaseValue.of(night)));
                    }
                }
            }
        }
        return cases;
    }

    static boolean matches(TableRule rule, Map<String, CaseValue> values) {
        return Stream.iterate(0, i -> i + 1).limit(INPUTS.size()).allMatch(i -> rule.cells()
                .get(i)
                .test()
                .holds(Objects.requireNonNull(values.get(INPUTS.get(i).name()))));
    }
}
