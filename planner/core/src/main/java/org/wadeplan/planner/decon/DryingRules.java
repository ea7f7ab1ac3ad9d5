package org.wadeplan.planner.decon;

import java.util.List;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.DeconRule.Kind;

/**
 * The hours of drying, counted from dry to the touch, that rules of the place ask of one leg. A rule makes drying longer and
 * never stands in for evidence that drying works.
 */
record DryingRules(List<DeconRule> rules) {

    static final DryingRules NONE = new DryingRules(List.of());

    /** The row with the drying that it and the rules ask for together. */
    Evidence applied(Evidence row) {
        boolean alone = row.recipe().kind() == AgentKind.DRY;
        double dryingH = alone ? Math.max(row.dryingH(), row.contactMin() / 60) : row.dryingH();
        for (DeconRule rule : rules) {
            if (asks(rule, row)) {
                dryingH = Math.max(dryingH, rule.value().orElse(0));
            }
        }
        return dryingH == row.dryingH() ? row : row.withDryingH(dryingH);
    }

    /** The rules that asked for the hours which a treatment ended up with. */
    List<DeconRule> behind(AppliedTreatment treatment) {
        return rules.stream()
                .filter(rule -> isAlone(rule) == (treatment.recipe().kind() == AgentKind.DRY))
                .filter(rule -> rule.value().orElse(0) >= treatment.dryingH() && treatment.dryingH() > 0)
                .toList();
    }

    private static boolean asks(DeconRule rule, Evidence row) {
        boolean kindFits = isAlone(rule) == (row.recipe().kind() == AgentKind.DRY);
        return kindFits && (rule.pests().isEmpty() || rule.pests().contains(row.pest()));
    }

    private static boolean isAlone(DeconRule rule) {
        return rule.kind() == Kind.DRYING_ALONE_H;
    }
}
