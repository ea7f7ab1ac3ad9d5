package org.wadeplan.planner.plan;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.hazard.VisitBriefing;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WeekPlan;

/** Every step's result on the way to a {@link RoundPlan}: the findings and the version are made from it. */
record PlanDraft(
        Round round,
        PlanOptions options,
        List<Reach> reaches,
        List<MethodDecision> decisions,
        List<VisitEffort> efforts,
        List<Permission> permissions,
        TurnaroundTable turnarounds,
        WeekPlan week,
        KitPlan kit,
        List<VisitBriefing> briefings,
        List<Problem> reachProblems) {

    RoundPlan finished() {
        RoundPlan unnamed = withLabel("");
        return withLabel(PlanJson.label(unnamed));
    }

    private RoundPlan withLabel(String label) {
        PlanVersion version = new PlanVersion(
                label,
                round.hash().whole(),
                options.seed().orElse(round.header().seed()),
                options.iterations(),
                Program.VERSION);
        List<Problem> findings = new ArrayList<>(reachProblems);
        findings.addAll(PlanFindings.of(this));
        findings.sort(Problem.WORST_FIRST);
        return new RoundPlan(
                round.header().id(),
                version,
                reaches,
                decisions,
                efforts,
                permissions,
                turnarounds,
                week,
                kit,
                briefings,
                PlanFindings.missing(this).isEmpty(),
                findings);
    }
}
