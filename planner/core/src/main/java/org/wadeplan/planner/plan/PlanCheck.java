package org.wadeplan.planner.plan;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.verify.ItemCarryCheck;
import org.wadeplan.planner.week.verify.WeekVerifier;

/** Everything that can be said against a finished plan: what it was made from, and every rule of the week. */
public final class PlanCheck {

    private PlanCheck() {}

    /** Findings, worst first; empty where no broken rule was found. */
    public static List<Problem> findings(Round round, RoundPlan plan) {
        List<Problem> findings = new ArrayList<>(provenance(round, plan));
        TurnaroundCheck.check(round, plan.turnarounds()).ifPresent(findings::add);
        findings.addAll(TurnaroundCheck.cleanings(round, plan.week()));
        findings.addAll(WeekVerifier.verify(round, plan));
        findings.addAll(ItemCarryCheck.of(round, plan));
        return findings.stream().sorted(Problem.WORST_FIRST).toList();
    }

    private static List<Problem> provenance(Round round, RoundPlan plan) {
        SourcePlace place = SourcePlace.file("plan.json");
        List<Problem> findings = new ArrayList<>();
        if (!plan.version().inputHash().equals(round.hash().whole())) {
            findings.add(Problem.warning(
                    "plan-of-other-inputs",
                    place,
                    "the plan was made from other files than the round folder holds now",
                    "inputs " + round.hash().brief() + "…, and the plan names "
                            + plan.version()
                                    .inputHash()
                                    .substring(
                                            0,
                                            Math.min(
                                                    10,
                                                    plan.version().inputHash().length())) + "…",
                    "plan again, or read the findings below as a check of the old plan against today's facts"));
        }
        if (!PlanJson.labelFits(plan)) {
            findings.add(
                    Problem.warning(
                            "plan-edited",
                            place,
                            "the plan was changed after Wadeplan wrote it",
                            "content that gives the label " + plan.version().label(),
                            "nothing, if the week was changed on purpose: its rules were checked again on what stands there now;"
                                    + " reaches, start settings, loads and briefings were not, so plan again before trusting them"));
        }
        return findings;
    }
}
