package org.wadeplan.planner.method.margin;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.CellWords;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.Interval;
import org.wadeplan.planner.method.Outcome;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.ValueType;
import org.wadeplan.planner.method.space.ColumnSlices;
import org.wadeplan.planner.method.space.TableIndex;
import org.wadeplan.planner.method.space.TableSpace;

/** Works out margins over the slices of a table. */
public final class MarginFinder {

    private final DecisionTable table;
    private final TableSpace space;
    private final TableIndex index;

    private MarginFinder(DecisionTable table) {
        this.table = table;
        this.space = TableSpace.of(List.of(table));
        this.index = TableIndex.of(table, space);
    }

    public static MarginFinder of(DecisionTable table) {
        return new MarginFinder(table);
    }

    /** The margins of one site, as far as everything that the table asks of it is known. */
    public SiteMargin margin(SiteCase site) {
        List<String> unknown = unknown(site);
        int[] here = index.slices(site.values());
        if (!unknown.isEmpty()) {
            return new SiteMargin(
                    site.site(), "not known", List.of(), List.of(), Optional.empty(), List.of(), List.of(), unknown);
        }
        String outcome = outcome(here);
        List<Integer> uncertain = IntStream.range(0, space.columns().size())
                .filter(column -> uncertainty(site, column).isPresent())
                .boxed()
                .toList();
        List<InputMargin> inputs = IntStream.range(0, space.columns().size())
                .mapToObj(column -> input(site, here, column, outcome))
                .toList();
        Map<String, Double> chances = new LinkedHashMap<>();
        chances(site, here.clone(), uncertain, 1, chances);
        return new SiteMargin(
                site.site(),
                outcome,
                index.matching(here).stream().map(TableRule::number).toList(),
                inputs,
                new JointSearch(site, here, uncertain, outcome).nearest(),
                sorted(chances),
                uncertain.stream().map(column -> name(column)).toList(),
                List.of());
    }

    /** Inputs without a value that some rule asks about after all that is known. */
    private List<String> unknown(SiteCase site) {
        List<TableRule> alive = table.rules().stream()
                .filter(rule -> IntStream.range(0, table.inputs().size()).allMatch(column -> Optional.ofNullable(
                                site.values().get(table.inputs().get(column).name()))
                        .map(value -> rule.cells().get(column).test().holds(value))
                        .orElse(true)))
                .toList();
        return IntStream.range(0, table.inputs().size())
                .filter(column -> !site.values().containsKey(name(column)))
                .filter(column -> alive.stream()
                        .anyMatch(rule -> !rule.cells().get(column).test().alwaysHolds()))
                .mapToObj(this::name)
                .toList();
    }

    private String name(int column) {
        return space.columns().get(column).input().name();
    }

    private String outcome(int[] slices) {
        return Outcome.of(table, index.answer(slices)).words();
    }

    private OptionalDouble uncertainty(SiteCase site, int column) {
        Double stated = site.uncertainties().get(name(column));
        boolean number = space.columns().get(column).input().type() == ValueType.NUMBER;
        return stated != null && number && stated > 0 && site.values().containsKey(name(column))
                ? OptionalDouble.of(stated)
                : OptionalDouble.empty();
    }

    private InputMargin input(SiteCase site, int[] here, int column, String outcome) {
        ColumnSlices slices = space.columns().get(column);
        TableInput input = slices.input();
        String words = CellWords.input(input) + " " + CellWords.value(input, site.values());
        Optional<CaseValue> value = Optional.ofNullable(site.values().get(input.name()));
        if (value.isEmpty()) {
            return new InputMargin(input.name(), words, List.of());
        }
        List<Flip> flips = new ArrayList<>();
        if (value.get() instanceof CaseValue.Quantity number) {
            for (int step : new int[] {-1, 1}) {
                first(here, column, step, outcome)
                        .ifPresent(slice -> flips.add(flip(site, here, column, slice, number.value())));
            }
        } else {
            for (int slice = 0; slice < slices.count(); slice++) {
                String there = outcome(at(here, column, slice));
                if (slices.isPossible(slice) && !there.equals(outcome)) {
                    String other = "if " + slices.sampleOf(slice).words();
                    flips.add(new Flip(other, Optional.empty(), true, there, Optional.empty()));
                }
            }
        }
        return new InputMargin(input.name(), words, List.copyOf(flips));
    }

    private OptionalInt first(int[] here, int column, int step, String outcome) {
        ColumnSlices slices = space.columns().get(column);
        for (int slice = here[column] + step; slice >= 0 && slice < slices.count(); slice += step) {
            if (slices.isPossible(slice) && !outcome(at(here, column, slice)).equals(outcome)) {
                return OptionalInt.of(slice);
            }
        }
        return OptionalInt.empty();
    }

    private static int[] at(int[] here, int column, int slice) {
        int[] there = here.clone();
        there[column] = slice;
        return there;
    }

    private Flip flip(SiteCase site, int[] here, int column, int slice, BigDecimal value) {
        ColumnSlices slices = space.columns().get(column);
        BigDecimal change = nearest(slices, slice, value).subtract(value);
        OptionalDouble uncertainty = uncertainty(site, column);
        return new Flip(
                MarginWords.change(slices.input(), change, slices.isPoint(slice)),
                Optional.of(change.doubleValue()),
                slices.isPoint(slice),
                outcome(at(here, column, slice)),
                uncertainty.isPresent()
                        ? Optional.of(change.abs().doubleValue() / uncertainty.getAsDouble())
                        : Optional.empty());
    }

    /** The end of a slice that a value outside it comes to first; the value itself where it lies inside or at the end. */
    private static BigDecimal nearest(ColumnSlices slices, int slice, BigDecimal value) {
        Interval interval = slices.interval(slice, slice);
        BigDecimal low = interval.low().filter(end -> value.compareTo(end) < 0).orElse(value);
        return interval.high().filter(end -> value.compareTo(end) > 0).orElse(low);
    }

    /** Adds up the chance of each outcome over the slices of the uncertain columns. */
    private void chances(
            SiteCase site, int[] slices, List<Integer> left, double chance, Map<String, Double> byOutcome) {
        if (left.isEmpty()) {
            byOutcome.merge(outcome(slices), chance, Double::sum);
            return;
        }
        int column = left.get(0);
        double[] each = sliceChances(site, column);
        for (int slice = 0; slice < each.length; slice++) {
            if (each[slice] > 0) {
                slices[column] = slice;
                chances(site, slices, left.subList(1, left.size()), chance * each[slice], byOutcome);
            }
        }
    }

    /** The chance of each slice; a limit alone has none, and what is not possible is left out. */
    private double[] sliceChances(SiteCase site, int column) {
        ColumnSlices slices = space.columns().get(column);
        double mean = value(site, column).doubleValue();
        double sd = uncertainty(site, column).orElseThrow();
        double[] each = new double[slices.count()];
        double all = 0;
        for (int slice = 0; slice < each.length; slice++) {
            if (slices.isPossible(slice) && !slices.isPoint(slice)) {
                Interval interval = slices.interval(slice, slice);
                double from = interval.low().map(BigDecimal::doubleValue).orElse(Double.NEGATIVE_INFINITY);
                double until = interval.high().map(BigDecimal::doubleValue).orElse(Double.POSITIVE_INFINITY);
                each[slice] = NormalCurve.between((from - mean) / sd, (until - mean) / sd);
                all += each[slice];
            }
        }
        for (int slice = 0; slice < each.length; slice++) {
            each[slice] = all > 0 ? each[slice] / all : 0;
        }
        return each;
    }

    private BigDecimal value(SiteCase site, int column) {
        if (site.values().get(name(column)) instanceof CaseValue.Quantity number) {
            return number.value();
        }
        throw new IllegalStateException(name(column) + " is no number");
    }

    private static List<OutcomeChance> sorted(Map<String, Double> chances) {
        return chances.entrySet().stream()
                .map(entry -> new OutcomeChance(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparingDouble(OutcomeChance::chance)
                        .reversed()
                        .thenComparing(OutcomeChance::outcome))
                .toList();
    }

    /** Looks for the nearest other outcome, nearest slices first, giving up branches that are farther already. */
    private final class JointSearch {

        private final SiteCase site;
        private final int[] here;
        private final List<Integer> columns;
        private final String outcome;
        private double least = Double.POSITIVE_INFINITY;
        private Optional<int[]> best = Optional.empty();

        JointSearch(SiteCase site, int[] here, List<Integer> columns, String outcome) {
            this.site = site;
            this.here = here;
            this.columns = columns;
            this.outcome = outcome;
        }

        Optional<JointFlip> nearest() {
            search(here.clone(), 0, 0);
            return best.map(slices -> new JointFlip(
                    Math.sqrt(least),
                    columns.stream()
                            .filter(column -> slices[column] != here[column])
                            .map(column -> words(column, slices[column]))
                            .toList(),
                    outcome(slices)));
        }

        private void search(int[] slices, int depth, double squares) {
            if (squares >= least) {
                return;
            }
            if (depth == columns.size()) {
                if (!outcome(slices).equals(outcome)) {
                    least = squares;
                    best = Optional.of(slices.clone());
                }
                return;
            }
            int column = columns.get(depth);
            for (int slice = 0; slice < space.columns().get(column).count(); slice++) {
                if (space.columns().get(column).isPossible(slice)) {
                    slices[column] = slice;
                    double away = away(column, slice);
                    search(slices, depth + 1, squares + away * away);
                }
            }
            slices[column] = here[column];
        }

        private double away(int column, int slice) {
            BigDecimal value = value(site, column);
            BigDecimal change = MarginFinder.nearest(space.columns().get(column), slice, value)
                    .subtract(value);
            return change.doubleValue() / uncertainty(site, column).orElseThrow();
        }

        private String words(int column, int slice) {
            ColumnSlices slices = space.columns().get(column);
            BigDecimal value = value(site, column);
            BigDecimal change = MarginFinder.nearest(slices, slice, value).subtract(value);
            return CellWords.input(slices.input()) + " "
                    + MarginWords.change(slices.input(), change, slices.isPoint(slice));
        }
    }
}
