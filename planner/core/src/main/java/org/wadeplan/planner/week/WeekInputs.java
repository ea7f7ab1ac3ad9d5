package org.wadeplan.planner.week;

import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.kit.VisitKit;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;

/** What the steps before the week found. */
public record WeekInputs(
        Round round,
        List<MethodDecision> decisions,
        List<VisitEffort> efforts,
        List<VisitKit> visitKits,
        TurnaroundTable turnarounds) {

    public Optional<MethodDecision> decision(String site) {
        return decisions.stream()
                .filter(decision -> decision.site().equals(site))
                .findFirst();
    }

    public Optional<VisitEffort> effort(String site) {
        return efforts.stream().filter(effort -> effort.site().equals(site)).findFirst();
    }

    public Optional<VisitKit> kit(String site, VisitPart part) {
        return visitKits.stream()
                .filter(kit -> kit.site().equals(site) && kit.part() == part)
                .findFirst();
    }
}
