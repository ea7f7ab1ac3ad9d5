package org.wadeplan.planner.method.space;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.TableCell;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.UnaryTest;
import org.wadeplan.planner.method.ValueType;

/** Every case that one or more tables can be asked about, in slices; and each rule as the box of cases that it matches. */
public final class TableSpace {

    private final List<ColumnSlices> columns;
    private final Box whole;

    private TableSpace(List<ColumnSlices> columns) {
        this.columns = columns;
        this.whole = new Box(columns.stream().map(ColumnSlices::possible).toArray(int[][]::new));
    }

    /** The inputs of all tables, each once, in the order in which they first stand. */
    public static TableSpace of(List<DecisionTable> tables) {
        Map<String, TableInput> inputs = new LinkedHashMap<>();
        Map<String, List<UnaryTest>> cells = new LinkedHashMap<>();
        for (DecisionTable table : tables) {
            for (int column = 0; column < table.inputs().size(); column++) {
                TableInput input = table.inputs().get(column);
                inputs.putIfAbsent(input.name(), input);
                List<UnaryTest> all = cells.computeIfAbsent(input.name(), name -> new ArrayList<>());
                int at = column;
                table.rules().forEach(rule -> all.add(rule.cells().get(at).test()));
                input.allowed().map(TableCell::test).ifPresent(all::add);
            }
        }
        return new TableSpace(inputs.values().stream()
                .map(input -> ColumnSlices.of(input, cells.getOrDefault(input.name(), List.of())))
                .toList());
    }

    public List<ColumnSlices> columns() {
        return columns;
    }

    /** Where the column of an input stands; -1 where no table has it. */
    int place(String input) {
        return IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).input().name().equals(input))
                .findFirst()
                .orElse(-1);
    }

    /** Every possible case. */
    public Box whole() {
        return whole;
    }

    /** Each rule's possible cases, in the order of the rules; a box without cases for a rule that can never match. */
    public List<Box> rules(DecisionTable table) {
        int[] places = columns.stream()
                .mapToInt(column -> place(table, column.input().name()))
                .toArray();
        return table.rules().stream().map(rule -> box(rule, places)).toList();
    }

    private static int place(DecisionTable table, String name) {
        return IntStream.range(0, table.inputs().size())
                .filter(i -> table.inputs().get(i).name().equals(name))
                .findFirst()
                .orElse(-1);
    }

    private Box box(TableRule rule, int[] places) {
        int[][] runs = new int[places.length][];
        for (int column = 0; column < places.length; column++) {
            ColumnSlices slices = columns.get(column);
            runs[column] = places[column] < 0
                    ? slices.possible()
                    : Runs.intersect(
                            slices.possible(),
                            slices.runs(rule.cells().get(places[column]).test()));
        }
        return new Box(runs);
    }

    /** Whether the column holds numbers, so that its slices have neighbours. */
    boolean isNumber(int column) {
        return columns.get(column).input().type() == ValueType.NUMBER;
    }

    /** What the box asks of one column, {@code -} where it asks nothing. */
    public UnaryTest test(Box box, int column) {
        return columns.get(column).test(box.runs(column));
    }

    /** Whether the box is one number alone in that column, though other numbers are possible. */
    public boolean isPoint(Box box, int column) {
        int[] runs = box.runs(column);
        return runs.length == 2
                && runs[0] == runs[1]
                && columns.get(column).isPoint(runs[0])
                && Runs.size(columns.get(column).possible()) > 1;
    }

    /** Whether the box asks nothing of that column. */
    public boolean isFree(Box box, int column) {
        return Runs.covers(box.runs(column), columns.get(column).possible());
    }

    /** A case in the box, by the names of the inputs: the middle of each stretch. */
    public Map<String, CaseValue> sample(Box box) {
        Map<String, CaseValue> values = new LinkedHashMap<>();
        for (int column = 0; column < columns.size(); column++) {
            ColumnSlices slices = columns.get(column);
            values.put(slices.input().name(), slices.sample(box.runs(column)));
        }
        return values;
    }

    /** What is left of one column of a box without what another box holds there. */
    public Box without(Box box, int column, Box other) {
        return box.with(column, Runs.minus(box.runs(column), other.runs(column)));
    }

    /** The box with what another box holds in one column added to its own. */
    public Box widened(Box box, int column, Box other) {
        return box.with(column, Runs.union(box.runs(column), other.runs(column)));
    }

    /** The box with another box's slices in one column. */
    public Box moved(Box box, int column, Box other) {
        return box.with(column, other.runs(column));
    }

    /** Whether the box is one stretch of numbers, or any set of words, in that column. */
    public boolean isOneStretch(Box box, int column) {
        return !isNumber(column) || box.runs(column).length == 2;
    }

    /** The box of one case alone; empty where a value is not known or not possible. */
    public Optional<Box> around(Map<String, CaseValue> values) {
        int[][] runs = new int[columns.size()][];
        for (int column = 0; column < runs.length; column++) {
            ColumnSlices slices = columns.get(column);
            CaseValue value = values.get(slices.input().name());
            if (value == null || value.type() != slices.input().type()) {
                return Optional.empty();
            }
            int slice = slices.sliceOf(value);
            runs[column] = Runs.intersect(slices.possible(), Runs.of(slice, slice));
        }
        Box box = new Box(runs);
        return box.isVoid() ? Optional.empty() : Optional.of(box);
    }

    /** Whether a value lies in one column of the box; empty where it is not known. */
    public Optional<Boolean> holds(Box box, int column, Map<String, CaseValue> values) {
        ColumnSlices slices = columns.get(column);
        return Optional.ofNullable(values.get(slices.input().name()))
                .filter(value -> value.type() == slices.input().type())
                .map(value -> Runs.contains(box.runs(column), slices.sliceOf(value)));
    }
}
