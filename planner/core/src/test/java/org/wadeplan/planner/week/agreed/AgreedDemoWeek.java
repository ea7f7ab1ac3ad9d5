package org.wadeplan.planner.week.agreed;

import java.util.List;
import java.util.function.UnaryOperator;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.effort.EffortPlanner;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.kit.VisitNeeds;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WeekInputs;

/** The agreed week of the troubled demo round, whole or with some of its lines changed. */
final class AgreedDemoWeek {

    static final Round ROUND = DemoRound.troubled();
    static final WeekInputs INPUTS = inputs(ROUND);

    private AgreedDemoWeek() {}

    static AgreedWeek.Laid laid() {
        return AgreedWeek.lay(INPUTS, ROUND.log().agreed());
    }

    static AgreedWeek.Laid laid(UnaryOperator<List<AgreedTask>> change) {
        return AgreedWeek.lay(INPUTS, change.apply(ROUND.log().agreed()));
    }

    private static WeekInputs inputs(Round round) {
        List<MethodDecision> decisions = MethodChooser.decide(round);
        List<VisitEffort> efforts = EffortPlanner.plan(round, decisions);
        return new WeekInputs(
                round, decisions, efforts, VisitNeeds.of(round, decisions, efforts), new TurnaroundTable(List.of()));
    }
}
