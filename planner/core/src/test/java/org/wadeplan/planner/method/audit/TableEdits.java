package org.wadeplan.planner.method.audit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.wadeplan.planner.method.CellText;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.Interval;
import org.wadeplan.planner.method.NumberSet;
import org.wadeplan.planner.method.TableCell;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.UnaryTest;

/** Small harm done to a table, as happens in a spreadsheet. */
final class TableEdits {

    private TableEdits() {}

    static DecisionTable without(DecisionTable table, int number) {
        return with(
                table,
                table.rules().stream().filter(rule -> rule.number() != number).toList());
    }

    /** The cells of a rule that ask something, in the form in which the audit writes them. */
    static List<String> askedCells(DecisionTable table, int number) {
        return table.rule(number).orElseThrow().cells().stream()
                .map(cell -> CellText.of(cell.test()))
                .filter(text -> !text.equals("-"))
                .toList();
    }

    /** One table for each end of each interval moved up or down by one, and for each end taken in or left out. */
    static List<DecisionTable> everyLimitMovedByOne(DecisionTable table) {
        List<DecisionTable> moved = new ArrayList<>();
        for (TableRule rule : table.rules()) {
            for (int column = 0; column < rule.cells().size(); column++) {
                if (rule.cells().get(column).test() instanceof UnaryTest.Numbers numbers) {
                    Interval interval = numbers.set().intervals().get(0);
                    for (Interval changed : changes(interval)) {
                        moved.add(withCell(table, rule, column, changed));
                    }
                }
            }
        }
        return moved;
    }

    static String difference(DecisionTable before, DecisionTable after) {
        return IntStream.range(0, before.rules().size())
                .filter(i -> !before.rules().get(i).equals(after.rules().get(i)))
                .mapToObj(i -> "rule " + (i + 1) + ": "
                        + after.rules().get(i).cells().stream()
                                .map(TableCell::text)
                                .toList())
                .findFirst()
                .orElse("no difference");
    }

    private static List<Interval> changes(Interval interval) {
        List<Interval> changes = new ArrayList<>();
        interval.low().ifPresent(low -> {
            add(
                    changes,
                    Optional.of(low.add(BigDecimal.ONE)),
                    interval.lowIncluded(),
                    interval.high(),
                    interval.highIncluded());
            add(
                    changes,
                    Optional.of(low.subtract(BigDecimal.ONE)),
                    interval.lowIncluded(),
                    interval.high(),
                    interval.highIncluded());
            add(changes, interval.low(), !interval.lowIncluded(), interval.high(), interval.highIncluded());
        });
        interval.high().ifPresent(high -> {
            add(
                    changes,
                    interval.low(),
                    interval.lowIncluded(),
                    Optional.of(high.add(BigDecimal.ONE)),
                    interval.highIncluded());
            add(
                    changes,
                    interval.low(),
                    interval.lowIncluded(),
                    Optional.of(high.subtract(BigDecimal.ONE)),
                    interval.highIncluded());
            add(changes, interval.low(), interval.lowIncluded(), interval.high(), !interval.highIncluded());
        });
        return changes;
    }

    private static void add(
            List<Interval> changes,
            Optional<BigDecimal> low,
            boolean lowIncluded,
            Optional<BigDecimal> high,
            boolean highIncluded) {
        if (low.isEmpty() || high.isEmpty() || low.get().compareTo(high.get()) < 0) {
            changes.add(new Interval(low, lowIncluded, high, highIncluded));
        }
    }

    private static DecisionTable withCell(DecisionTable table, TableRule rule, int column, Interval interval) {
        UnaryTest test = new UnaryTest.Numbers(NumberSet.of(interval));
        List<TableCell> cells = new ArrayList<>(rule.cells());
        cells.set(column, new TableCell(CellText.of(test), test));
        TableRule changed = new TableRule(rule.number(), rule.id(), cells, rule.outputs(), rule.annotation());
        return with(
                table,
                table.rules().stream()
                        .map(one -> one.equals(rule) ? changed : one)
                        .toList());
    }

    private static DecisionTable with(DecisionTable table, List<TableRule> rules) {
        return new DecisionTable(
                table.file(),
                table.id(),
                table.name(),
                table.hitPolicy(),
                table.inputs(),
                table.outputs(),
                rules,
                table.hash());
    }
}
