package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.CellText;
import org.wadeplan.planner.method.CellWords;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.Outcome;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.UnaryTest;
import org.wadeplan.planner.method.space.Box;
import org.wadeplan.planner.method.space.TableSpace;

/** A table under audit: its rules as boxes, and its words. */
record AuditedTable(DecisionTable table, TableSpace space, List<Box> boxes) {

    static AuditedTable of(DecisionTable table) {
        TableSpace space = TableSpace.of(List.of(table));
        return new AuditedTable(table, space, space.rules(table));
    }

    TableRule rule(int index) {
        return table.rules().get(index);
    }

    boolean sameOutputs(int a, int b) {
        return rule(a).outputs().equals(rule(b).outputs());
    }

    TableInput input(int column) {
        return space.columns().get(column).input();
    }

    int width() {
        return space.columns().size();
    }

    /** {@code deepest point at most 0.7 m} */
    RegionPart part(Box box, int column, boolean cause) {
        UnaryTest test = space.test(box, column);
        TableInput input = input(column);
        return new RegionPart(
                input.name(), CellWords.input(input) + " " + CellWords.cell(input, test), CellText.of(test), cause);
    }

    /** What the box asks, column by column, without what it leaves free. */
    List<RegionPart> region(Box box) {
        List<RegionPart> parts = new ArrayList<>();
        for (int column = 0; column < width(); column++) {
            if (!space.isFree(box, column)) {
                parts.add(part(box, column, false));
            }
        }
        return List.copyOf(parts);
    }

    /** A cell as its author wrote it. */
    String cellText(int index, int column) {
        String text = rule(index).cells().get(column).text();
        return text.isBlank() ? "-" : text;
    }

    /** A case as cells. */
    static Map<String, String> cells(Map<String, CaseValue> values) {
        Map<String, String> cells = new LinkedHashMap<>();
        values.forEach((name, value) -> cells.put(name, CellText.of(value)));
        return cells;
    }

    /** The rules that match a case of which everything is known. */
    List<TableRule> matching(Map<String, CaseValue> values) {
        return table.rules().stream().filter(rule -> matches(rule, values)).collect(Collectors.toList());
    }

    private boolean matches(TableRule rule, Map<String, CaseValue> values) {
        for (int column = 0; column < table.inputs().size(); column++) {
            CaseValue value = values.get(table.inputs().get(column).name());
            if (value == null || !rule.cells().get(column).test().holds(value)) {
                return false;
            }
        }
        return true;
    }

    /** The result of a rule, in words: the method, or every output where none is called so. */
    String result(TableRule rule) {
        return Outcome.method(table, rule);
    }

    /** The results of some rules, each once. */
    List<String> results(List<Integer> indexes) {
        return indexes.stream().map(index -> result(rule(index))).distinct().toList();
    }

    List<Integer> numbers(List<Integer> indexes) {
        return indexes.stream().map(index -> rule(index).number()).toList();
    }
}
