package org.wadeplan.planner.kit;

import java.util.List;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WeekPlan;

/** After the week: what each crew loads each day, serial by serial, and what is missing. */
public final class LoadPlanner {

    private LoadPlanner() {}

    /**
     * Loads by date, then crew; shortages by date, then kind. Same inputs, same picks.
     *
     * @param visits what each part of each visit needs, from {@link VisitNeeds}
     */
    public static KitPlan plan(Round round, List<VisitKit> visits, List<VisitEffort> efforts, WeekPlan week) {
        return new WeekLoads(round, visits, efforts, week).plan();
    }
}
