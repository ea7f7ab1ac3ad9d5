package org.wadeplan.planner.plan;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
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
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Progress;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;
import org.wadeplan.planner.week.WeekPlanner;
import org.wadeplan.planner.week.agreed.AgreedWeek;

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
        return plan(
                round,
                options,
                progress,
                inputs -> new AgreedWeek.Laid(WeekPlanner.plan(inputs, options.iterations(), progress), List.of()));
    }

    /** The plan of the week in force: the week as people agreed it where the round has one, else one that is planned now. */
    public static RoundPlan inForce(Round round, PlanOptions options, Progress progress) {
        List<AgreedTask> agreed = round.log().agreed();
        return agreed.isEmpty()
                ? plan(round, options, progress)
                : plan(round, new PlanOptions(options.seed(), 0), progress, inputs -> AgreedWeek.lay(inputs, agreed));
    }

    private static RoundPlan plan(
            Round round, PlanOptions options, Progress progress, Function<WeekInputs, AgreedWeek.Laid> schedule) {
        progress.report(0, 0, "reaches");
        Checked<List<Reach>> reaches = ReachLayout.lay(round);
        progress.report(0, 0, "methods and effort");
        List<MethodDecision> decisions = MethodChooser.decide(round);
        List<VisitEffort> efforts = EffortPlanner.plan(round, decisions);
        progress.report(0, 0, "kit and turnaround");
        List<VisitKit> needs = VisitNeeds.of(round, decisions, efforts);
        TurnaroundTable turnarounds = TurnaroundPlanner.table(round);
        WeekInputs inputs = new WeekInputs(round, decisions, efforts, needs, turnarounds);
        AgreedWeek.Laid laid = schedule.apply(inputs);
        WeekPlan week = laid.week();
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
                Stream.concat(reaches.problems().stream(), laid.findings().stream())
                        .toList());
        return draft.finished();
    }
}
