package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.List;

/**
 * What the timer should show about a sub-reach, so that effort is spread evenly and compares between years.
 *
 * @param letter A at the downstream end
 * @param expectedS button seconds in this sub-reach
 * @param totalS button seconds from the start to its end
 */
public record PaceStep(char letter, int expectedS, int totalS) {

    /** Equal sub-reaches share the time equally; whole seconds that add up to the whole. */
    public static List<PaceStep> of(int shockS, int subReaches) {
        List<PaceStep> steps = new ArrayList<>();
        int before = 0;
        for (int i = 1; i <= subReaches; i++) {
            int total = (int) Math.round((double) shockS * i / subReaches);
            steps.add(new PaceStep((char) ('A' + i - 1), total - before, total));
            before = total;
        }
        return List.copyOf(steps);
    }
}
