package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Values of one column that stand for all others: two values that every cell treats alike are one. Exact, because cells
 * change only at the ends of their intervals: one value at each end and one between each two ends suffice.
 */
final class ColumnSamples {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private ColumnSamples() {}

    /**
     * One value for every way in which the cells can answer.
     *
     * @param limits tests that a value must pass to be possible at all
     */
    static List<CaseValue> of(ValueType type, List<UnaryTest> cells, List<UnaryTest> limits) {
        List<UnaryTest> all = new ArrayList<>(cells);
        all.addAll(limits);
        Map<List<Boolean>, CaseValue> bySignature = new LinkedHashMap<>();
        for (CaseValue value : candidates(type, all)) {
            if (limits.stream().allMatch(limit -> limit.holds(value))) {
                List<Boolean> signature =
                        cells.stream().map(cell -> cell.holds(value)).toList();
                bySignature.putIfAbsent(signature, value);
            }
        }
        return List.copyOf(bySignature.values());
    }

    private static List<CaseValue> candidates(ValueType type, List<UnaryTest> tests) {
        return switch (type) {
            case NUMBER -> numbers(tests);
            case TEXT -> texts(tests);
            case TRUTH -> List.of(CaseValue.of(true), CaseValue.of(false));
        };
    }

    private static List<CaseValue> numbers(List<UnaryTest> tests) {
        TreeSet<BigDecimal> ends = new TreeSet<>();
        for (UnaryTest test : tests) {
            if (test instanceof UnaryTest.Numbers numbers) {
                ends.addAll(numbers.set().ends());
            }
        }
        if (ends.isEmpty()) {
            return List.of(new CaseValue.Quantity(BigDecimal.ZERO));
        }
        List<CaseValue> samples = new ArrayList<>();
        BigDecimal before = ends.first().subtract(BigDecimal.ONE);
        samples.add(new CaseValue.Quantity(before));
        for (BigDecimal end : ends) {
            samples.add(new CaseValue.Quantity(before.add(end).divide(TWO)));
            samples.add(new CaseValue.Quantity(end));
            before = end;
        }
        samples.add(new CaseValue.Quantity(ends.last().add(BigDecimal.ONE)));
        return samples;
    }

    private static List<CaseValue> texts(List<UnaryTest> tests) {
        TreeSet<String> named = new TreeSet<>();
        for (UnaryTest test : tests) {
            if (test instanceof UnaryTest.Texts texts) {
                named.addAll(texts.texts());
            }
        }
        // Longer than every text named, so it is none of them: it stands for all the others.
        String other = "another text" + String.join("", named);
        List<CaseValue> samples = new ArrayList<>();
        named.forEach(text -> samples.add(CaseValue.of(text)));
        samples.add(CaseValue.of(other));
        return samples;
    }
}
