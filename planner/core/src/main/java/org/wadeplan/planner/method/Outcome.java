package org.wadeplan.planner.method;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What an answer means for the work at a site: two answers with the same outcome send people there with the same gear.
 *
 * @param settled whether it names one method
 * @param words the method, {@code no rule fits}, or that several clash
 */
public record Outcome(boolean settled, String words) {

    public static Outcome of(DecisionTable table, TableAnswer answer) {
        return answer.fold(
                rule -> new Outcome(true, method(table, rule)),
                () -> new Outcome(false, "no rule fits"),
                rules -> new Outcome(false, "rules clash (" + methods(table, rules, " against ") + ")"),
                rules -> {
                    String methods = methods(table, rules, ", then ");
                    return new Outcome(
                            rules.stream()
                                            .map(rule -> method(table, rule))
                                            .distinct()
                                            .count()
                                    == 1,
                            methods);
                });
    }

    /** The method that a rule names; of a table without a column for it, every output. */
    public static String method(DecisionTable table, TableRule rule) {
        return table.methodColumn().isPresent()
                ? rule.outputs().get(table.methodColumn().getAsInt()).orElse("no method")
                : rule.outputs().stream().map(value -> value.orElse("-")).collect(Collectors.joining(" / "));
    }

    private static String methods(DecisionTable table, List<TableRule> rules, String between) {
        return rules.stream().map(rule -> method(table, rule)).distinct().collect(Collectors.joining(between));
    }
}
