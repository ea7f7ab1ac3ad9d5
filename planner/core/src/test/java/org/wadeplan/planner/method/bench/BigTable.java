package org.wadeplan.planner.method.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Random;
import org.wadeplan.planner.method.CellText;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.method.Interval;
import org.wadeplan.planner.method.NumberSet;
import org.wadeplan.planner.method.TableCell;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.TableOutput;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.UnaryTest;
import org.wadeplan.planner.method.ValueType;

/**
 * Makes large tables as careful authors would: one area halved again and again at random limits, a rule for each piece. So
 * they are complete and free of overlap until harm is done to them.
 */
public final class BigTable {

    private static final int TOP = 1000;

    private BigTable() {}

    /** A piece: lower ends excluded but for 0, upper ends included. */
    private record Piece(List<Integer> low, List<Integer> high, int order) {}

    /** A table without a fault. */
    public static DecisionTable faultless(int rules, int inputs, long seed) {
        Random random = new Random(seed);
        PriorityQueue<Piece> pieces = new PriorityQueue<>((a, b) -> Integer.compare(a.order(), b.order()));
        pieces.add(new Piece(Collections.nCopies(inputs, 0), Collections.nCopies(inputs, TOP), 0));
        while (pieces.size() < rules) {
            Piece piece = pieces.remove();
            int column = random.nextInt(inputs);
            int low = piece.low().get(column);
            int high = piece.high().get(column);
            if (high - low < 2) {
                pieces.add(new Piece(piece.low(), piece.high(), piece.order() + 1));
                continue;
            }
            int cut = low + 1 + random.nextInt(high - low - 1);
            List<Integer> lowerHigh = new ArrayList<>(piece.high());
            lowerHigh.set(column, cut);
            List<Integer> upperLow = new ArrayList<>(piece.low());
            upperLow.set(column, cut);
            pieces.add(new Piece(piece.low(), lowerHigh, piece.order() + 1 + random.nextInt(2)));
            pieces.add(new Piece(upperLow, piece.high(), piece.order() + 1 + random.nextInt(2)));
        }
        return table(new ArrayList<>(pieces), inputs, random);
    }

    /** The same with rules taken away and limits moved by one. */
    public static DecisionTable harmed(DecisionTable table, int harms, long seed) {
        Random random = new Random(seed);
        List<TableRule> rules = new ArrayList<>(table.rules());
        for (int i = 0; i < harms; i++) {
            int at = random.nextInt(rules.size());
            if (i % 2 == 0) {
                rules.remove(at);
            } else {
                rules.set(at, moved(rules.get(at), random));
            }
        }
        return new DecisionTable(
                table.file(),
                "",
                table.name(),
                table.hitPolicy(),
                table.inputs(),
                table.outputs(),
                rules,
                table.hash());
    }

    private static TableRule moved(TableRule rule, Random random) {
        List<TableCell> cells = new ArrayList<>(rule.cells());
        int column = random.nextInt(cells.size());
        if (cells.get(column).test() instanceof UnaryTest.Numbers numbers) {
            Interval old = numbers.set().intervals().get(0);
            Interval wider = new Interval(
                    old.low(), old.lowIncluded(), old.high().map(high -> high.add(BigDecimal.ONE)), old.highIncluded());
            cells.set(column, cell(new UnaryTest.Numbers(NumberSet.of(wider))));
        }
        return new TableRule(rule.number(), rule.id(), cells, rule.outputs(), rule.annotation());
    }

    private static DecisionTable table(List<Piece> pieces, int inputs, Random random) {
        List<TableInput> columns = new ArrayList<>();
        UnaryTest allowed = new UnaryTest.Numbers(NumberSet.of(
                new Interval(Optional.of(BigDecimal.ZERO), true, Optional.of(BigDecimal.valueOf(TOP)), true)));
        for (int column = 0; column < inputs; column++) {
            columns.add(new TableInput("", "x" + column, "x" + column, ValueType.NUMBER, Optional.of(cell(allowed))));
        }
        List<TableRule> rules = new ArrayList<>();
        for (int row = 0; row < pieces.size(); row++) {
            List<TableCell> cells = new ArrayList<>();
            for (int column = 0; column < inputs; column++) {
                cells.add(cell(test(
                        pieces.get(row).low().get(column),
                        pieces.get(row).high().get(column))));
            }
            String method = "M" + random.nextInt(6);
            rules.add(new TableRule(row + 1, "rule " + (row + 1), cells, List.of(Optional.of(method)), ""));
        }
        TableOutput output = new TableOutput("", "method", Optional.of(ValueType.TEXT), List.of());
        return new DecisionTable(
                "big.dmn", "", "big", HitPolicy.UNIQUE, columns, List.of(output), rules, "0".repeat(64));
    }

    private static UnaryTest test(int low, int high) {
        if (low == 0 && high == TOP) {
            return new UnaryTest.Anything();
        }
        Optional<BigDecimal> from = low == 0 ? Optional.empty() : Optional.of(BigDecimal.valueOf(low));
        Optional<BigDecimal> until = high == TOP ? Optional.empty() : Optional.of(BigDecimal.valueOf(high));
        return new UnaryTest.Numbers(NumberSet.of(new Interval(from, false, until, until.isPresent())));
    }

    private static TableCell cell(UnaryTest test) {
        return new TableCell(CellText.of(test), test);
    }
}
