package org.wadeplan.planner.decon;

import java.util.Comparator;
import java.util.List;

/**
 * What a clean costs: first how soon the kit is released, then how long people are busy, then how many treatments, then how
 * few kit sets find room at a time in the scarcest place it needs, because others wait for that.
 *
 * <p>Release comes first because drying alone keeps nobody busy, and would win every time by crew minutes while it holds the
 * kit set for days.
 *
 * @param roomFor kit sets that the scarcest place holds at a time
 */
record CleanCost(int releasedAfterMin, int crewMin, int treatments, int roomFor) implements Comparable<CleanCost> {

    private static final Comparator<CleanCost> ORDER = Comparator.comparingInt(CleanCost::releasedAfterMin)
            .thenComparingInt(CleanCost::crewMin)
            .thenComparingInt(CleanCost::treatments)
            .thenComparingInt(cost -> -cost.roomFor());

    static CleanCost of(List<DeconStep> steps, int treatments, int roomFor) {
        return new CleanCost(crewMin(steps) + aloneMin(steps), crewMin(steps), treatments, roomFor);
    }

    static int crewMin(List<DeconStep> steps) {
        return steps.stream()
                .filter(DeconStep::crewBusy)
                .mapToInt(DeconStep::minutes)
                .sum();
    }

    static int aloneMin(List<DeconStep> steps) {
        return steps.stream()
                .filter(step -> !step.crewBusy())
                .mapToInt(DeconStep::minutes)
                .sum();
    }

    @Override
    public int compareTo(CleanCost other) {
        return ORDER.compare(this, other);
    }
}
