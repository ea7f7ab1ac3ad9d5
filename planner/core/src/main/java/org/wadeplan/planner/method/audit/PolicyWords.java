package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.method.TableAnswer;
import org.wadeplan.planner.method.TableRule;

/** What a table says of a case, and what it would say under every other hit policy. */
final class PolicyWords {

    private final AuditedTable audited;

    PolicyWords(AuditedTable audited) {
        this.audited = audited;
    }

    /** {@code rules 5 and 12 match: EFISH and TRAP} */
    String answer(List<TableRule> matching) {
        if (matching.isEmpty()) {
            return "no rule matches";
        }
        List<Integer> numbers = matching.stream().map(TableRule::number).toList();
        return RuleList.words(numbers)
                + (numbers.size() == 1 ? " matches: " : " match: ")
                + RuleList.joined(
                        matching.stream().map(audited::result).distinct().toList());
    }

    /** One line for each answer, with the policies that give it. */
    List<String> byPolicy(List<TableRule> matching) {
        if (matching.isEmpty()) {
            return List.of("any: nothing to choose from, no answer");
        }
        Map<String, List<String>> policies = new LinkedHashMap<>();
        Arrays.stream(HitPolicy.values())
                .forEach(policy -> policies.computeIfAbsent(does(policy, matching), words -> new ArrayList<>())
                        .add(policy.word()));
        List<String> lines = new ArrayList<>();
        policies.forEach((words, names) -> lines.add(String.join(", ", names) + ": " + words));
        return List.copyOf(lines);
    }

    private String does(HitPolicy policy, List<TableRule> matching) {
        DecisionTable table = audited.table();
        boolean noOrder =
                table.outputs().stream().allMatch(output -> output.values().isEmpty());
        if (policy.byOutputValues() && noOrder) {
            return "cannot be used here, no output lists its values in order";
        }
        TableAnswer answer = TableAnswer.of(table.under(policy), matching);
        return answer.fold(
                rule -> policy == HitPolicy.ANY
                        ? "allowed, " + audited.result(rule)
                        : "rule " + rule.number() + " (" + audited.result(rule) + ") answers and hides the others",
                () -> "no answer",
                rules -> "forbidden, no answer",
                rules -> "lists "
                        + String.join(
                                ", then ",
                                rules.stream().map(audited::result).distinct().toList()));
    }
}
