package org.wadeplan.planner.plan;

import java.util.List;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.effort.EffortPlanner;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.hazard.BriefingPlanner;
import org.wadeplan.planner.hazard.VisitBriefing;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.LoadPlanner;
import org.wadeplan.planner.kit.VisitKit;
import org.wadeplan.planner.kit.VisitNeeds;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodFindings;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Progress;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;
import org.wadeplan.planner.week.WeekPlanner;

/**
 * The straight line from a round to its plan. The only class that knows the order of the steps; reading the round
 * (step 1) comes before it, writing the pack (step 9) after it.
 */
public final class RoundPlanner {

    private RoundPlanner() {}

    /** Why no plan may be made of this round: its method table fails some of its sites. Empty where nothing stands against it. */
    public static List<Problem> refusals(Round round) {
        return MethodFindings.refusals(round, MethodChooser.decide(round));
    }

    /** A plan for a round without errors and without {@link #refusals}. The same round and options give the same plan. */
    public static RoundPlan plan(Round round, PlanOptions options, Progress progress) {
        progress.report(0, 0, "reaches");
        Checked<List<Reach>> reaches = ReachLayout.lay(round);
        progress.report(0, 0, "methods and effort");
        List<MethodDecision> decisions = MethodChooser.decide(round);
        List<VisitEffort> efforts = EffortPlanner.plan(round, decisions);
        progress.report(0, 0, "kit and turnaround");
        List<VisitKit> needs = VisitNeeds.of(round, decisions, efforts);
        TurnaroundTable turnarounds = TurnaroundPlanner.table(round);
        WeekInputs inputs = new WeekInputs(round, decisions, efforts, needs, turnarounds);
        WeekPlan week = WeekPlanner.plan(inputs, options.iterations(), progress);
        progress.report(0, 0, "loads and briefings");
        KitPlan kit = LoadPlanner.plan(round, needs, efforts, week);
        List<Permission> permissions = PlacedPermissions.of(round, week);
        List<VisitBriefing> briefings =
                BriefingPlanner.plan(round, reaches.value().orElse(List.of()), week);
        PlanDraft draft = new PlanDraft(
                round,
                options,
                reaches.value().orElse(List.of()),
                decisions,
                efforts,
                permissions,
                turnarounds,
                week,
                kit,
                briefings,
                reaches.problems());
        return draft.finished();
    }
}
