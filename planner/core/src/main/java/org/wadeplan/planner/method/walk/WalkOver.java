package org.wadeplan.planner.method.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.CellWords;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.TableInput;

/**
 * What the walk-over changed.
 *
 * @param planned the decision on planned values
 * @param measured the decision with the readings in their place
 * @param flipped whether another method comes out, or none
 * @param readings each reading beside its planned value
 * @param causes the cells of the planned rule that the readings fail
 */
public record WalkOver(
        MethodDecision planned, MethodDecision measured, boolean flipped, List<String> readings, List<String> causes) {

    /** Puts readings in the place of planned values and asks the table again. */
    public static WalkOver of(DecisionTable table, SiteCase site, Map<String, CaseValue> readings) {
        SiteCase after = site.measured(readings);
        MethodDecision planned = decide(table, site);
        MethodDecision measured = decide(table, after);
        List<String> beside = new ArrayList<>();
        for (TableInput input : table.inputs()) {
            if (readings.containsKey(input.name())) {
                beside.add(CellWords.input(input) + " " + CellWords.value(input, after.values()) + " (planned "
                        + CellWords.value(input, site.values()) + ")");
            }
        }
        boolean flipped = !MethodWords.method(planned).equals(MethodWords.method(measured));
        return new WalkOver(planned, measured, flipped, List.copyOf(beside), causes(table, planned, after));
    }

    private static MethodDecision decide(DecisionTable table, SiteCase site) {
        return MethodChooser.decide(table, site.site(), MethodChooser.readable(table, site.values()));
    }

    private static List<String> causes(DecisionTable table, MethodDecision planned, SiteCase after) {
        List<String> causes = new ArrayList<>();
        planned.chosen().flatMap(chosen -> table.rule(chosen.rule())).ifPresent(rule -> {
            for (int column = 0; column < table.inputs().size(); column++) {
                TableInput input = table.inputs().get(column);
                Optional<CaseValue> value = Optional.ofNullable(after.values().get(input.name()));
                if (value.isPresent() && !rule.cells().get(column).test().holds(value.get())) {
                    causes.add("rule " + rule.number() + " fails at " + CellWords.input(input) + " "
                            + CellWords.value(input, after.values()) + ", not in "
                            + CellWords.cell(input, rule.cells().get(column).test()));
                }
            }
        });
        return List.copyOf(causes);
    }
}
