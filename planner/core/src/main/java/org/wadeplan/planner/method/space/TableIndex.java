package org.wadeplan.planner.method.space;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.TableAnswer;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.UnaryTest;

/**
 * Answers many cases quickly: for each slice of each column it knows the rules that pass it, one bit a rule. Exactly what
 * the table's cells say, outside the allowed values too.
 */
public final class TableIndex {

    private static final int BITS = 64;

    private final DecisionTable table;
    private final TableSpace space;
    private final int[] places;
    private final long[][][] passing;
    private final int words;

    private TableIndex(DecisionTable table, TableSpace space) {
        this.table = table;
        this.space = space;
        this.words = (table.rules().size() + BITS - 1) / BITS;
        this.places = table.inputs().stream()
                .mapToInt(input -> space.place(input.name()))
                .toArray();
        this.passing = new long[places.length][][];
        for (int column = 0; column < places.length; column++) {
            passing[column] = passing(column);
        }
    }

    public static TableIndex of(DecisionTable table) {
        return of(table, TableSpace.of(List.of(table)));
    }

    /** With the slices of a space that this table was part of. */
    public static TableIndex of(DecisionTable table, TableSpace space) {
        return new TableIndex(table, space);
    }

    private long[][] passing(int column) {
        ColumnSlices slices = space.columns().get(places[column]);
        long[][] bits = new long[slices.count()][words];
        for (int rule = 0; rule < table.rules().size(); rule++) {
            UnaryTest test = table.rules().get(rule).cells().get(column).test();
            int[] runs = slices.runs(test);
            for (int i = 0; i < runs.length; i += 2) {
                for (int slice = runs[i]; slice <= runs[i + 1]; slice++) {
                    bits[slice][rule / BITS] |= 1L << (rule % BITS);
                }
            }
        }
        return bits;
    }

    /**
     * What the table says of a case of which everything is known.
     *
     * @throws NullPointerException where an input has no value
     */
    public TableAnswer answer(Map<String, CaseValue> values) {
        int[] slices = new int[space.columns().size()];
        for (int place : places) {
            ColumnSlices column = space.columns().get(place);
            slices[place] = column.sliceOf(
                    Objects.requireNonNull(values.get(column.input().name())));
        }
        return answer(slices);
    }

    /**
     * What the table says of a case given by its slices.
     *
     * @param slices one for each column of the space
     */
    public TableAnswer answer(int[] slices) {
        return TableAnswer.of(table, matching(slices));
    }

    /** The rules that match, in the order of the table. */
    public List<TableRule> matching(int[] slices) {
        if (places.length == 0) {
            return table.rules();
        }
        long[] all = passing[0][slices[places[0]]];
        if (places.length > 1) {
            all = all.clone();
            for (int column = 1; column < places.length; column++) {
                long[] one = passing[column][slices[places[column]]];
                for (int word = 0; word < words; word++) {
                    all[word] &= one[word];
                }
            }
        }
        List<TableRule> rules = new ArrayList<>(2);
        for (int word = 0; word < words; word++) {
            for (long left = all[word]; left != 0; left &= left - 1) {
                rules.add(table.rules().get(word * BITS + Long.numberOfTrailingZeros(left)));
            }
        }
        return rules;
    }

    /** The slices that known values lie in; those of unknown inputs are 0. */
    public int[] slices(Map<String, CaseValue> values) {
        int[] slices = new int[space.columns().size()];
        Arrays.setAll(slices, column -> {
            ColumnSlices known = space.columns().get(column);
            CaseValue value = values.get(known.input().name());
            return value == null ? 0 : known.sliceOf(value);
        });
        return slices;
    }
}
