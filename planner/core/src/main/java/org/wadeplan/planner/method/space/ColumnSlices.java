package org.wadeplan.planner.method.space;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.Interval;
import org.wadeplan.planner.method.NumberSet;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.UnaryTest;
import org.wadeplan.planner.method.ValueType;

/**
 * One column cut into slices, rising. Numbers: slice 0 lies below the lowest limit, slice 1 is that limit alone, slice 2
 * lies between it and the next, and so on; the last lies above the highest. Texts: one slice a word, the last for any
 * other word. Truths: 0 is false, 1 is true.
 */
public final class ColumnSlices {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final int[] EITHER = {0, 1};

    private final TableInput input;
    private final InputDomain domain;
    private final BigDecimal[] limits;
    private final String[] words;
    private final int[] possible;

    private ColumnSlices(TableInput input, InputDomain domain, BigDecimal[] limits, String[] words) {
        this.input = input;
        this.domain = domain;
        this.limits = limits;
        this.words = words;
        this.possible = runs(domain.test());
    }

    /** @param cells every test that this column is put to, of all tables looked at */
    static ColumnSlices of(TableInput input, List<UnaryTest> cells) {
        InputDomain domain = InputDomain.of(input, cells);
        List<UnaryTest> all = new ArrayList<>(cells);
        all.add(domain.test());
        TreeSet<BigDecimal> limits = new TreeSet<>();
        TreeSet<String> words = new TreeSet<>();
        for (UnaryTest test : all) {
            if (test instanceof UnaryTest.Numbers numbers) {
                limits.addAll(numbers.set().ends());
            } else if (test instanceof UnaryTest.Texts texts) {
                words.addAll(texts.texts());
            }
        }
        return new ColumnSlices(input, domain, limits.toArray(BigDecimal[]::new), words.toArray(String[]::new));
    }

    public TableInput input() {
        return input;
    }

    public InputDomain domain() {
        return domain;
    }

    /** How many slices there are, those that no value of the domain lies in among them. */
    public int count() {
        return switch (input.type()) {
            case NUMBER -> 2 * limits.length + 1;
            case TEXT -> words.length + 1;
            case TRUTH -> 2;
        };
    }

    /** Whether values of the domain lie in a slice. */
    public boolean isPossible(int slice) {
        return Runs.contains(possible, slice);
    }

    /** The slices that values of the domain lie in. */
    int[] possible() {
        return possible;
    }

    /** Whether the slice is one number alone. */
    public boolean isPoint(int slice) {
        return input.type() == ValueType.NUMBER && slice % 2 == 1;
    }

    /** A value that lies in one slice. */
    public CaseValue sampleOf(int slice) {
        return sample(Runs.of(slice, slice));
    }

    /** The slice that a value lies in, possible or not. */
    public int sliceOf(CaseValue value) {
        if (value instanceof CaseValue.Quantity number) {
            int found = Arrays.binarySearch(limits, number.value());
            return found >= 0 ? 2 * found + 1 : 2 * (-found - 1);
        }
        if (value instanceof CaseValue.Text text) {
            int found = Arrays.binarySearch(words, text.value());
            return found >= 0 ? found : words.length;
        }
        return ((CaseValue.Truth) value).value() ? 1 : 0;
    }

    /** The slices whose values pass a test; the test's own limits must be among this column's. */
    int[] runs(UnaryTest test) {
        if (input.type() == ValueType.TRUTH) {
            return test.fold(() -> EITHER, set -> EITHER, (texts, except) -> EITHER, ColumnSlices::truths);
        }
        int[] all = Runs.of(0, count() - 1);
        return test.fold(() -> all, this::numbers, (texts, except) -> texts(texts, except, all), truths -> all);
    }

    private static int[] truths(UnaryTest.Truths truths) {
        if (truths.trueAllowed() && truths.falseAllowed()) {
            return EITHER;
        }
        return truths.trueAllowed() ? Runs.of(1, 1) : truths.falseAllowed() ? Runs.of(0, 0) : Runs.NONE;
    }

    private int[] texts(Iterable<String> texts, boolean except, int[] all) {
        int[] named = Runs.NONE;
        for (String text : texts) {
            int slice = sliceOf(CaseValue.of(text));
            named = Runs.union(named, Runs.of(slice, slice));
        }
        return except ? Runs.minus(all, named) : named;
    }

    private int[] numbers(NumberSet set) {
        int[] runs = new int[set.intervals().size() * 2];
        int at = 0;
        for (Interval interval : set.intervals()) {
            runs[at++] = interval.low()
                    .map(low -> limit(low) + (interval.lowIncluded() ? 0 : 1))
                    .orElse(0);
            runs[at++] = interval.high()
                    .map(high -> limit(high) - (interval.highIncluded() ? 0 : 1))
                    .orElse(count() - 1);
        }
        return runs;
    }

    private int limit(BigDecimal value) {
        return 2 * Arrays.binarySearch(limits, value) + 1;
    }

    /** The test that exactly these slices pass, in its shortest form: ends that the domain gives anyway are left out. */
    UnaryTest test(int[] runs) {
        if (Runs.covers(runs, possible)) {
            return new UnaryTest.Anything();
        }
        return switch (input.type()) {
            case TRUTH -> new UnaryTest.Truths(Runs.contains(runs, 1), Runs.contains(runs, 0));
            case TEXT -> textTest(runs);
            case NUMBER -> new UnaryTest.Numbers(numberSet(runs));
        };
    }

    private UnaryTest textTest(int[] runs) {
        boolean except = Runs.contains(runs, words.length);
        TreeSet<String> texts = new TreeSet<>();
        for (int slice = 0; slice < words.length; slice++) {
            if (Runs.contains(runs, slice) != except) {
                texts.add(words[slice]);
            }
        }
        return new UnaryTest.Texts(texts, except);
    }

    private NumberSet numberSet(int[] runs) {
        List<Interval> intervals = new ArrayList<>();
        int lowest = possible.length == 0 ? 0 : possible[0];
        int highest = possible.length == 0 ? count() - 1 : possible[possible.length - 1];
        for (int i = 0; i < runs.length; i += 2) {
            boolean point = runs[i] == runs[i + 1];
            intervals.add(interval(
                    runs[i] <= lowest && !point ? 0 : runs[i],
                    runs[i + 1] >= highest && !point ? count() - 1 : runs[i + 1]));
        }
        return new NumberSet(intervals);
    }

    /** The numbers of the slices from first to last. */
    public Interval interval(int first, int last) {
        Optional<BigDecimal> low = first == 0 ? Optional.empty() : Optional.of(limits[(first - 1) / 2]);
        Optional<BigDecimal> high = last == count() - 1 ? Optional.empty() : Optional.of(limits[last / 2]);
        return new Interval(low, first % 2 == 1, high, last % 2 == 1);
    }

    /** A value in these slices, near the middle of the longest stretch that has two ends. */
    CaseValue sample(int[] runs) {
        return switch (input.type()) {
            case TRUTH -> CaseValue.of(Runs.contains(runs, 1));
            case TEXT -> CaseValue.of(runs[0] < words.length ? words[runs[0]] : "other" + String.join("", words));
            case NUMBER -> new CaseValue.Quantity(middle(interval(runs[0], runs[1])));
        };
    }

    private static BigDecimal middle(Interval interval) {
        if (interval.low().isPresent() && interval.high().isPresent()) {
            return interval.low().get().add(interval.high().get()).divide(TWO);
        }
        return interval.low()
                .map(low -> low.add(BigDecimal.ONE))
                .or(() -> interval.high().map(high -> high.subtract(BigDecimal.ONE)))
                .orElse(BigDecimal.ZERO);
    }
}
