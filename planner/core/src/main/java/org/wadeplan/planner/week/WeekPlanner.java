package org.wadeplan.planner.week;

import org.wadeplan.planner.week.search.WeekSearch;

/** Step 7: plans the week. */
public final class WeekPlanner {

    private WeekPlanner() {}

    /**
     * The best week found. The same inputs, seed and iterations give the same plan, byte for byte, unless it is cancelled.
     *
     * @param iterations budget of the search; 0 gives the constructed week unimproved
     */
    public static WeekPlan plan(WeekInputs inputs, int iterations, Progress progress) {
        return WeekSearch.search(inputs, iterations, progress);
    }
}
