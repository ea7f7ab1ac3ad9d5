package org.wadeplan.planner.plan;

import java.util.OptionalLong;

/**
 * How hard to look for a better week.
 *
 * @param seed replaces the round's own seed
 * @param iterations search budget; the same number gives the same plan on any machine
 */
public record PlanOptions(OptionalLong seed, int iterations) {

    /** Enough for a week of two crews, in a few seconds. */
    public static final int USUAL_ITERATIONS = 1500;

    public PlanOptions {
        if (iterations < 0) {
            throw new IllegalArgumentException("The search budget can't be below 0: " + iterations);
        }
    }

    public static PlanOptions usual() {
        return new PlanOptions(OptionalLong.empty(), USUAL_ITERATIONS);
    }
}
