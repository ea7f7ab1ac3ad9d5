package org.wadeplan.planner.decon;

import java.util.Comparator;
import java.util.List;

/**
 * What a clean costs: first how soon the kit is released, then how long people are busy, then how many treatments, then how
 * few kit sets find room at a time in the scarcest place it needs, because others wait for that: all of that is time. Among
 * cleans that take the same time the one with less product counts as cheaper, then the one that is easier on the gear.
 *
 * <p>Release comes first because drying alone keeps nobody busy, and would win every time by crew minutes while it holds the
 * kit set for days.
 *
 * @param roomFor kit sets that the scarcest place holds at a time
 * @param productG product or active agent for one bath of each treatment, grams
 * @param wearMin minutes that the gear spends in heat or in a chemical
 */
record CleanCost(int releasedAfterMin, int crewMin, int treatments, int roomFor, double productG, int wearMin)
        implements Comparable<CleanCost> {

    private static final Comparator<CleanCost> ORDER = Comparator.comparingInt(CleanCost::releasedAfterMin)
            .thenComparingInt(CleanCost::crewMin)
            .thenComparingInt(CleanCost::treatments)
            .thenComparingInt(cost -> -cost.roomFor())
            .thenComparingDouble(CleanCost::productG)
            .thenComparingInt(CleanCost::wearMin);

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
