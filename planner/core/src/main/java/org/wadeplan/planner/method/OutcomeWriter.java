package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Turns the answers of a table about one case into an outcome with its reasons in words. */
final class OutcomeWriter {

    private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");

    private final DecisionTable table;
    private final Map<String, CaseValue> values;
    private final Completions completions;

    OutcomeWriter(DecisionTable table, Map<String, CaseValue> values) {
        this.table = table;
        this.values = values;
        this.completions = Completions.of(table, values);
    }

    MethodOutcome outcome() {
        List<TableAnswer> answers = completions.answers();
        List<String> outcomes = answers.stream().map(this::key).distinct().toList();
        if (outcomes.size() != 1) {
            return undecided(answers);
        }
        return answers.get(0).fold(rule -> chosen(), this::noRule, rules -> clash(), this::listed);
    }

    private MethodOutcome clash() {
        List<TableRule> rules = completions.possibleRules();
        return new MethodOutcome.Clash(numbers(rules), methods(rules));
    }

    /** A list that names one method is as good as one rule; of several a person has to choose. */
    private MethodOutcome listed(List<TableRule> rules) {
        return methods(rules).size() == 1 ? chosen() : new MethodOutcome.Clash(numbers(rules), methods(rules));
    }

    /** Two answers with one key mean the same work at the site. */
    private String key(TableAnswer answer) {
        return answer.fold(
                rule -> "method " + method(rule),
                () -> "no rule",
                rules -> "clash",
                rules -> (methods(rules).size() == 1 ? "method " : "list ") + String.join(", ", methods(rules)));
    }

    private MethodOutcome chosen() {
        List<TableRule> rules = completions.possibleRules();
        TableRule first = rules.get(0);
        return new MethodOutcome.Chosen(
                first.number(),
                first.id(),
                method(first),
                crewMin(rules),
                readings(first),
                numbers(rules),
                unknown(rules));
    }

    private MethodOutcome undecided(List<TableAnswer> answers) {
        List<TableRule> rules = completions.possibleRules();
        List<String> troubles = answers.stream()
                .flatMap(answer -> answer.fold(
                        rule -> Stream.<String>empty(),
                        () -> Stream.of("no rule fits"),
                        clash -> Stream.of("rules " + joined(clash) + " clash"),
                        list -> methods(list).size() == 1
                                ? Stream.<String>empty()
                                : Stream.of("rules " + joined(list) + " both answer")))
                .distinct()
                .toList();
        List<String> missing = completions.deciding(this::key);
        Completions.Settling settling = completions.settling(missing, this::key);
        return new MethodOutcome.Undecided(
                missing, numbers(rules), methods(rules), troubles, settling.inputs(), settling.always());
    }

    private MethodOutcome noRule() {
        return new MethodOutcome.NoRule(
                table.rules().stream().map(this::firstFailure).toList());
    }

    /** The first cell that fails; where none of the known ones does, the first that asks for something unknown. */
    private MethodOutcome.FailedCell firstFailure(TableRule rule) {
        int column = IntStream.range(0, table.inputs().size())
                .filter(i -> known(i).map(value -> !test(rule, i).holds(value)).orElse(false))
                .findFirst()
                .orElseGet(() -> IntStream.range(0, table.inputs().size())
                        .filter(i -> known(i).isEmpty() && !test(rule, i).alwaysHolds())
                        .findFirst()
                        .orElseThrow());
        TableInput input = table.inputs().get(column);
        return new MethodOutcome.FailedCell(
                rule.number(),
                CellWords.input(input),
                CellWords.value(input, values),
                CellWords.cell(input, test(rule, column)));
    }

    private List<MethodOutcome.Reading> readings(TableRule rule) {
        List<MethodOutcome.Reading> readings = new ArrayList<>();
        for (int column = 0; column < table.inputs().size(); column++) {
            TableInput input = table.inputs().get(column);
            readings.add(new MethodOutcome.Reading(
                    CellWords.input(input), CellWords.value(input, values), CellWords.cell(input, test(rule, column))));
        }
        return List.copyOf(readings);
    }

    /** Inputs that are not known although some possible rule asks about them. */
    private List<String> unknown(List<TableRule> rules) {
        return IntStream.range(0, table.inputs().size())
                .filter(column -> known(column).isEmpty()
                        && rules.stream().anyMatch(rule -> !test(rule, column).alwaysHolds()))
                .mapToObj(column -> table.inputs().get(column).name())
                .toList();
    }

    /** The largest crew that any possible rule asks for: the safe side where the rule is not settled. */
    private OptionalInt crewMin(List<TableRule> rules) {
        OptionalInt column = table.outputColumn(DecisionTable.CREW_OUTPUT);
        if (column.isEmpty()) {
            return OptionalInt.empty();
        }
        return rules.stream()
                .flatMap(rule -> rule.outputs().get(column.getAsInt()).stream())
                .filter(text -> WHOLE.matcher(text).matches())
                .mapToInt(Integer::parseInt)
                .max();
    }

    private String method(TableRule rule) {
        return rule.outputs().get(table.methodColumn().orElse(0)).orElse("");
    }

    private Optional<CaseValue> known(int column) {
        return Optional.ofNullable(values.get(table.inputs().get(column).name()));
    }

    private static UnaryTest test(TableRule rule, int column) {
        return rule.cells().get(column).test();
    }

    private List<String> methods(List<TableRule> rules) {
        return rules.stream().map(this::method).distinct().toList();
    }

    private static List<Integer> numbers(List<TableRule> rules) {
        return rules.stream().map(TableRule::number).toList();
    }

    private static String joined(List<TableRule> rules) {
        return String.join(" and ", numbers(rules).stream().map(String::valueOf).toList());
    }
}
