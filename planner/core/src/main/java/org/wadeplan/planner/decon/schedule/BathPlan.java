package org.wadeplan.planner.decon.schedule;

import java.util.List;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WeekPlan;

/**
 * The week's baths and what they use up.
 *
 * @param bench the cleanings by the clock
 * @param baths to make up, by when they must be ready
 * @param stock for each product, against the store
 */
public record BathPlan(BenchPlan bench, List<PlannedBath> baths, List<BathStock> stock) {

    public static BathPlan of(Round round, WeekPlan week) {
        BenchPlan bench = BenchPlan.of(round, week);
        List<PlannedBath> baths = PlannedBaths.of(round, bench.tasks());
        return new BathPlan(bench, baths, StockCount.of(round, week, baths));
    }

    /** What concerns one kit set: its cleanings, the baths it lies in; the stock stays that of the whole week. */
    public BathPlan only(String kitSet) {
        List<PlannedBath> its = baths.stream()
                .filter(bath ->
                        bath.uses().stream().anyMatch(use -> use.kitSet().equals(kitSet)))
                .toList();
        return new BathPlan(bench.only(kitSet), its, stock);
    }
}
