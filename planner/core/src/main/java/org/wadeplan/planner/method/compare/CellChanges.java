package org.wadeplan.planner.method.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.TableRule;

/** What was edited between two versions of a table, rule by rule. */
final class CellChanges {

    private CellChanges() {}

    static List<String> of(DecisionTable before, DecisionTable after) {
        List<String> changes = new ArrayList<>();
        if (before.hitPolicy() != after.hitPolicy()) {
            changes.add("hit policy " + before.hitPolicy().word() + " became "
                    + after.hitPolicy().word());
        }
        Map<String, TableRule> newer = new LinkedHashMap<>();
        after.rules().forEach(rule -> newer.put(rule.id(), rule));
        for (TableRule rule : before.rules()) {
            Optional<TableRule> twin = Optional.ofNullable(newer.remove(rule.id()));
            if (twin.isEmpty()) {
                changes.add("rule " + rule.number() + " (" + rule.id() + ") is gone");
            } else {
                changes.addAll(cells(before, after, rule, twin.get()));
            }
        }
        newer.values().forEach(rule -> changes.add("rule " + rule.number() + " (" + rule.id() + ") is new"));
        return List.copyOf(changes);
    }

    private static List<String> cells(DecisionTable before, DecisionTable after, TableRule old, TableRule now) {
        Map<String, String> was = byColumn(before, old);
        Map<String, String> is = byColumn(after, now);
        List<String> changes = new ArrayList<>();
        is.forEach((column, text) -> {
            String earlier = was.getOrDefault(column, "no such column");
            if (!Objects.equals(earlier, text)) {
                changes.add(
                        "rule " + now.number() + " (" + now.id() + "), " + column + ": " + earlier + " became " + text);
            }
        });
        return changes;
    }

    private static Map<String, String> byColumn(DecisionTable table, TableRule rule) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int column = 0; column < table.inputs().size(); column++) {
            cells.put(
                    table.inputs().get(column).name(), rule.cells().get(column).text());
        }
        for (int column = 0; column < table.outputs().size(); column++) {
            cells.put(
                    table.outputs().get(column).name(),
                    rule.outputs().get(column).orElse("-"));
        }
        return cells;
    }
}
