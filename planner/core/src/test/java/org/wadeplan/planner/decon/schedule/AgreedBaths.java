package org.wadeplan.planner.decon.schedule;

import java.util.List;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.effort.EffortPlanner;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.kit.VisitNeeds;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;
import org.wadeplan.planner.week.agreed.AgreedWeek;

/** The week that the leaders of the troubled demo round agreed (Ilvermoor scenario, section 4.8). */
public final class AgreedBaths {

    public static final Round ROUND = DemoRound.troubled();
    public static final WeekPlan WEEK = week();

    private AgreedBaths() {}

    private static WeekPlan week() {
        List<MethodDecision> decisions = MethodChooser.decide(ROUND);
        List<VisitEffort> efforts = EffortPlanner.plan(ROUND, decisions);
        WeekInputs inputs = new WeekInputs(
                ROUND, decisions, efforts, VisitNeeds.of(ROUND, decisions, efforts), new TurnaroundTable(List.of()));
        return AgreedWeek.of(inputs, ROUND.log().agreed());
    }
}
