package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Every way in which the unknown values of a case may turn out, as far as the table can tell them apart, and what the
 * table says of each.
 */
final class Completions {

    /** Beyond this the search is given up and the case counts as not decided. */
    private static final int MOST = 200_000;

    /** Beyond this only single inputs are tried for what to measure first. */
    private static final long MOST_TRIED = 4_000_000;

    /** An unknown input that some possible rule asks about. */
    private record Axis(int column, String input, List<CaseValue> samples) {}

    /** One way it may turn out: which sample on each axis, and the answer. */
    private record Case(List<Integer> picks, TableAnswer answer) {}

    private final DecisionTable table;
    private final List<TableRule> alive;
    private final List<Axis> axes;
    private final List<Case> cases;

    private Completions(DecisionTable table, List<TableRule> alive, List<Axis> axes) {
        this.table = table;
        this.alive = alive;
        this.axes = axes;
        this.cases = size(axes) > MOST
                ? List.of()
                : Stream.iterate(
                                Optional.of(axes.stream().map(axis -> 0).toList()),
                                Optional::isPresent,
                                picks -> picks.flatMap(this::next))
                        .flatMap(Optional::stream)
                        .map(picks -> new Case(picks, answer(picks)))
                        .toList();
    }

    static Completions of(DecisionTable table, Map<String, CaseValue> values) {
        List<TableRule> alive = table.rules().stream()
                .filter(rule -> mayMatch(table, rule, values))
                .toList();
        List<Axis> axes = new ArrayList<>();
        for (int column = 0; column < table.inputs().size(); column++) {
            TableInput input = table.inputs().get(column);
            List<UnaryTest> cells = cells(alive, column);
            if (!values.containsKey(input.name()) && cells.stream().anyMatch(cell -> !cell.alwaysHolds())) {
                axes.add(new Axis(column, input.name(), samples(input, cells)));
            }
        }
        return new Completions(table, alive, List.copyOf(axes));
    }

    /** False where there were too many to look at. */
    boolean complete() {
        return !cases.isEmpty();
    }

    List<TableAnswer> answers() {
        return cases.stream().map(Case::answer).toList();
    }

    /** Rules that match in some completion, or, where there were too many to look at, that nothing known rules out. */
    List<TableRule> possibleRules() {
        if (!complete()) {
            return alive;
        }
        Set<TableRule> rules = new LinkedHashSet<>();
        for (TableAnswer answer : answers()) {
            rules.addAll(answer.rules());
        }
        return alive.stream().filter(rules::contains).toList();
    }

    /**
     * The unknown inputs that can change the outcome, whatever else is learnt.
     *
     * @param outcome what counts as one and the same outcome
     */
    List<String> deciding(Function<TableAnswer, String> outcome) {
        return axes.stream()
                .filter(axis -> !complete() || matters(axes.indexOf(axis), outcome))
                .map(Axis::input)
                .toList();
    }

    /**
     * The fewest of some inputs, one or two, that settle the outcome whatever their readings and whatever the others are;
     * where none do, the two that leave the fewest readings open.
     *
     * @param among inputs that can change the outcome
     */
    Settling settling(List<String> among, Function<TableAnswer, String> outcome) {
        List<List<String>> choices = new ArrayList<>();
        among.forEach(one -> choices.add(List.of(one)));
        boolean few = (long) cases.size() * among.size() * among.size() < MOST_TRIED;
        for (int i = 0; few && i < among.size(); i++) {
            for (int j = i + 1; j < among.size(); j++) {
                choices.add(List.of(among.get(i), among.get(j)));
            }
        }
        List<String> best = List.of();
        double leastOpen = Double.POSITIVE_INFINITY;
        for (List<String> choice : choices) {
            double open = open(choice, outcome);
            if (open < leastOpen) {
                leastOpen = open;
                best = choice;
            }
        }
        return new Settling(best, leastOpen == 0);
    }

    /** Which inputs to measure, and whether that settles it for certain. */
    record Settling(List<String> inputs, boolean always) {}

    /** The share of readings of these inputs after which the outcome is still open. */
    private double open(List<String> inputs, Function<TableAnswer, String> outcome) {
        List<Integer> kept = axes.stream()
                .filter(axis -> inputs.contains(axis.input()))
                .map(axes::indexOf)
                .toList();
        Map<List<Integer>, Set<String>> byReading = new HashMap<>();
        for (Case one : cases) {
            byReading
                    .computeIfAbsent(kept.stream().map(one.picks()::get).toList(), reading -> new HashSet<>())
                    .add(outcome.apply(one.answer()));
        }
        long open = byReading.values().stream()
                .filter(outcomes -> outcomes.size() > 1)
                .count();
        return byReading.isEmpty() ? Double.POSITIVE_INFINITY : (double) open / byReading.size();
    }

    /** Whether two completions that differ on this axis alone come out differently. */
    private boolean matters(int axis, Function<TableAnswer, String> outcome) {
        Map<List<Integer>, String> seen = new HashMap<>();
        for (Case one : cases) {
            List<Integer> others = new ArrayList<>(one.picks());
            others.set(axis, 0);
            String result = outcome.apply(one.answer());
            if (!seen.merge(others, result, (first, second) -> first).equals(result)) {
                return true;
            }
        }
        return false;
    }

    private TableAnswer answer(List<Integer> picks) {
        List<TableRule> matching =
                alive.stream().filter(rule -> holdsOnAxes(rule, picks)).toList();
        return TableAnswer.of(table, matching);
    }

    private boolean holdsOnAxes(TableRule rule, List<Integer> picks) {
        for (int i = 0; i < axes.size(); i++) {
            Axis axis = axes.get(i);
            if (!rule.cells().get(axis.column()).test().holds(axis.samples().get(picks.get(i)))) {
                return false;
            }
        }
        return true;
    }

    /** Counts up like an odometer; empty after the last. */
    private Optional<List<Integer>> next(List<Integer> picks) {
        List<Integer> next = new ArrayList<>(picks);
        for (int i = next.size() - 1; i >= 0; i--) {
            if (next.get(i) + 1 < axes.get(i).samples().size()) {
                next.set(i, next.get(i) + 1);
                return Optional.of(List.copyOf(next));
            }
            next.set(i, 0);
        }
        return Optional.empty();
    }

    private static long size(List<Axis> axes) {
        long size = 1;
        for (Axis axis : axes) {
            size = Math.min(MOST + 1L, size * axis.samples().size());
        }
        return size;
    }

    private static boolean mayMatch(DecisionTable table, TableRule rule, Map<String, CaseValue> values) {
        for (int column = 0; column < table.inputs().size(); column++) {
            Optional<CaseValue> value =
                    Optional.ofNullable(values.get(table.inputs().get(column).name()));
            UnaryTest test = rule.cells().get(column).test();
            if (value.isPresent() && !test.holds(value.get())) {
                return false;
            }
        }
        return true;
    }

    private static List<UnaryTest> cells(List<TableRule> rules, int column) {
        return rules.stream().map(rule -> rule.cells().get(column).test()).toList();
    }

    /** Where the limits leave nothing, the table contradicts nature; then every value is looked at. */
    private static List<CaseValue> samples(TableInput input, List<UnaryTest> cells) {
        List<CaseValue> samples = ColumnSamples.of(input.type(), cells, limits(input));
        return samples.isEmpty() ? ColumnSamples.of(input.type(), cells, List.of()) : samples;
    }

    private static List<UnaryTest> limits(TableInput input) {
        List<UnaryTest> limits = new ArrayList<>();
        input.allowed().map(TableCell::test).ifPresent(limits::add);
        SiteInput.named(input.name())
                .filter(known -> known.type() == input.type())
                .map(SiteInput::possible)
                .ifPresent(limits::add);
        return limits;
    }
}
