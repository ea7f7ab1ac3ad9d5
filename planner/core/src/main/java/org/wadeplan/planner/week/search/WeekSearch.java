package org.wadeplan.planner.week.search;

import org.wadeplan.planner.week.Progress;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;

/** The search as a whole: builds the numbers, searches, writes the plan out. */
public final class WeekSearch {

    private WeekSearch() {}

    /** The best week found within so many iterations; the same inputs and iterations give the same week. */
    public static WeekPlan search(WeekInputs inputs, int iterations, Progress progress) {
        WeekModel model = new ModelBuilder(inputs).build();
        if (model.slots().isEmpty()) {
            return PlanWriter.withoutCrews(model);
        }
        WeekEvaluator evaluator = new WeekEvaluator(model);
        long seed = inputs.round().header().seed();
        WeekState best = new RuinRecreate(model, evaluator, seed).search(iterations, progress);
        return new PlanWriter(model, evaluator, best).write(progress.cancelled());
    }
}
