package org.wadeplan.planner.plan;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.hazard.VisitBriefing;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.week.WeekPlan;

/**
 * Every step's result for one round.
 *
 * @param reaches by site, in the order of the site list
 * @param decisions by site
 * @param efforts for each site with a method that means a visit
 * @param permissions for each visit as placed
 * @param turnarounds step 6's table
 * @param briefings for each part of a visit as placed
 * @param complete false where a site that should be visited has no place in the week
 * @param findings what a person should read before using the plan, worst first
 */
public record RoundPlan(
        String round,
        PlanVersion version,
        List<Reach> reaches,
        List<MethodDecision> decisions,
        List<VisitEffort> efforts,
        List<Permission> permissions,
        TurnaroundTable turnarounds,
        WeekPlan week,
        KitPlan kit,
        List<VisitBriefing> briefings,
        boolean complete,
        List<Problem> findings) {

    public Optional<Reach> reach(String site) {
        return reaches.stream().filter(reach -> reach.site().equals(site)).findFirst();
    }

    public Optional<MethodDecision> decision(String site) {
        return decisions.stream()
                .filter(decision -> decision.site().equals(site))
                .findFirst();
    }

    public Optional<VisitEffort> effort(String site) {
        return efforts.stream().filter(effort -> effort.site().equals(site)).findFirst();
    }
}
