package org.wadeplan.planner.pack;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachLayer;
import org.wadeplan.geo.reach.SiteStart;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.effort.EffortPlanner;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.kit.LoadPlanner;
import org.wadeplan.planner.kit.VisitKit;
import org.wadeplan.planner.kit.VisitNeeds;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodFindings;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.permission.PermissionCheck;
import org.wadeplan.planner.plan.PlanVersion;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.Progress;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;
import org.wadeplan.planner.week.WeekPlanner;

/** A demo round taken through the steps before the pack. */
final class DemoPlan {

    private static final int ITERATIONS = 200;

    private DemoPlan() {}

    static RoundPlan of(Round round) {
        List<MethodDecision> decisions = MethodChooser.decide(round);
        List<VisitEffort> efforts = EffortPlanner.plan(round, decisions);
        List<VisitKit> needs = VisitNeeds.of(round, decisions, efforts);
        TurnaroundTable turnarounds = TurnaroundPlanner.table(round);
        WeekPlan week = WeekPlanner.plan(
                new WeekInputs(round, decisions, efforts, needs, turnarounds), ITERATIONS, Progress.NONE);
        return new RoundPlan(
                round.header().id(),
                new PlanVersion(
                        "0a1b2c3d4e", round.hash().whole(), round.header().seed(), ITERATIONS, "0.1.0"),
                reaches(round),
                decisions,
                efforts,
                permissions(round, week),
                turnarounds,
                week,
                LoadPlanner.plan(round, needs, efforts, week),
                MethodFindings.of(round, decisions));
    }

    private static List<Reach> reaches(Round round) {
        ReachLayer layer = new ReachLayer(
                round.terrain().network(), round.terrain().crs(), round.header().reachRule());
        return round.sites().stream()
                .map(site -> new SiteStart(site.id(), site.stream(), site.shortCode(), site.start(), site.stakeBank()))
                .flatMap(start -> layer.lay(start, SourcePlace.file("sites.csv")).value().stream())
                .toList();
    }

    private static List<Permission> permissions(Round round, WeekPlan week) {
        List<Permission> permissions = new ArrayList<>();
        for (CrewDay day : week.crewDays()) {
            for (Activity visit : day.visits()) {
                visit.site()
                        .flatMap(round::site)
                        .ifPresent(site -> permissions.add(
                                PermissionCheck.of(round, site, visit.method().orElseThrow(), day.date())));
            }
        }
        return permissions;
    }
}
