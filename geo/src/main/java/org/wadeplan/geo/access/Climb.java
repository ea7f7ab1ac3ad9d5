package org.wadeplan.geo.access;

import java.util.OptionalDouble;
import org.wadeplan.geo.terrain.Ground;

/** How much a straight walk goes up. */
final class Climb {

    private static final double LEAST_STEP_M = 5;

    private Climb() {}

    /**
     * All rises along the walk together, metres. Ups and downs of less than a vertical step of the grid are taken for its
     * coarseness and left out.
     *
     * @return empty where the grid lacks a height on the way
     */
    static OptionalDouble upM(StraightWalk walk, Ground ground) {
        int steps = Math.max(1, (int) Math.ceil(walk.lengthM() / Math.max(LEAST_STEP_M, ground.cellM() / 2)));
        double upM = 0;
        double lowest = Double.NaN;
        double highest = Double.NaN;
        for (int i = 0; i <= steps; i++) {
            OptionalDouble height = ground.elevation().elevationM(walk.after(walk.lengthM() * i / steps));
            if (height.isEmpty()) {
                return height;
            }
            double atM = height.getAsDouble();
            if (i == 0 || atM < lowest || highest - atM >= ground.verticalStepM()) {
                upM += i == 0 ? 0 : risen(lowest, highest, ground);
                lowest = atM;
                highest = atM;
            }
            highest = Math.max(highest, atM);
        }
        return OptionalDouble.of(upM + risen(lowest, highest, ground));
    }

    private static double risen(double lowest, double highest, Ground ground) {
        return highest - lowest >= ground.verticalStepM() ? highest - lowest : 0;
    }
}
