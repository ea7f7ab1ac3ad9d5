package org.wadeplan.planner.decon;

import java.util.OptionalInt;

/**
 * How hot a 60 L tub must be before cold gear goes in, so that it still holds its temperature at the end.
 *
 * <p>An estimate of our own from a heat balance (60 L, 0.25 m2 of surface, 12 °C air, light wind, 10 kg of gear with 2 L of
 * water at 12 °C), not a published table: it tells people where to start, and the thermometer decides. The contact time
 * starts when the bath is back at its temperature with the gear in, and the last reading must still reach it.
 */
public final class HotBath {

    public static final String BASIS =
            "estimate of our own: 60 L tub, 12 °C air, 10 kg of wet gear at 12 °C; measure at start and end";

    private static final double[] HOLD_C = {45, 50, 55, 60};
    private static final double[] OPEN_LOSS_K_PER_MIN = {0.13, 0.17, 0.22, 0.28};
    private static final double[] LIDDED_LOSS_K_PER_MIN = {0.04, 0.05, 0.05, 0.06};
    private static final double GEAR_TEMP_C = 12;
    /** 3.5 K at 50 °C, in proportion to how much colder the gear is. */
    private static final double GEAR_DROP_PER_K = 3.55 / 38;

    private static final double MARGIN_K = 1;

    private HotBath() {}

    /**
     * Whole degrees to start from, rounded up; empty outside 45 to 60 °C, where the estimate was not made.
     *
     * @param holdTempC temperature to hold
     * @param contactMin for how long
     */
    public static OptionalInt startTempC(double holdTempC, double contactMin, boolean lidded) {
        if (holdTempC < HOLD_C[0] || holdTempC > HOLD_C[HOLD_C.length - 1]) {
            return OptionalInt.empty();
        }
        double lossK = lossKPerMin(holdTempC, lidded) * contactMin;
        double dropK = gearDropK(holdTempC);
        return OptionalInt.of((int) Math.ceil(holdTempC + dropK + lossK + MARGIN_K));
    }

    /** Kelvin that the bath drops by when the cold wet gear goes in. */
    public static double gearDropK(double holdTempC) {
        return GEAR_DROP_PER_K * (holdTempC - GEAR_TEMP_C);
    }

    /** Kelvin lost each minute, interpolated between the rows of the estimate; 45 to 60 °C. */
    public static double lossKPerMin(double tempC, boolean lidded) {
        double[] loss = lidded ? LIDDED_LOSS_K_PER_MIN : OPEN_LOSS_K_PER_MIN;
        int upper = 1;
        while (upper < HOLD_C.length - 1 && tempC > HOLD_C[upper]) {
            upper++;
        }
        double share = (tempC - HOLD_C[upper - 1]) / (HOLD_C[upper] - HOLD_C[upper - 1]);
        return loss[upper - 1] + share * (loss[upper] - loss[upper - 1]);
    }
}
