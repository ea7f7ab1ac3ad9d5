package org.wadeplan.planner.method;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.wadeplan.planner.round.MethodOverride;

/** Puts a person's decision in the place of the table's, with its reason and with what the table said. */
final class Overrides {

    private Overrides() {}

    static MethodDecision applied(DecisionTable table, MethodDecision decision, MethodOverride override) {
        MethodOutcome outcome = new MethodOutcome.Chosen(
                0, "override", override.method(), crewMin(table, decision, override.method()), List.of());
        String says = decision.chosen()
                .map(chosen -> chosen.method() + " by rule " + chosen.rule())
                .orElseGet(() -> decision.outcome() instanceof MethodOutcome.NoRule
                        ? "no rule fits"
                        : MethodWords.why(decision));
        return new MethodDecision(
                decision.site(),
                outcome,
                decision.table(),
                decision.tableHash(),
                Optional.of(new MethodDecision.Overridden(override.reason(), says)));
    }

    /** As the rule asks where the table says the same; else the largest crew that any rule asks for with this method. */
    private static OptionalInt crewMin(DecisionTable table, MethodDecision decision, String method) {
        Optional<MethodOutcome.Chosen> same =
                decision.chosen().filter(chosen -> chosen.method().equals(method));
        OptionalInt methods = table.methodColumn();
        OptionalInt crews = table.outputColumn(DecisionTable.CREW_OUTPUT);
        if (same.isPresent()) {
            return same.get().crewMin();
        }
        return methods.isEmpty() || crews.isEmpty()
                ? OptionalInt.empty()
                : table.rules().stream()
                        .filter(rule -> Objects.equals(rule.outputs().get(methods.getAsInt()), Optional.of(method)))
                        .flatMap(rule -> rule.outputs().get(crews.getAsInt()).stream())
                        .filter(text -> text.matches("\\d{1,6}"))
                        .mapToInt(Integer::parseInt)
                        .max();
    }
}
