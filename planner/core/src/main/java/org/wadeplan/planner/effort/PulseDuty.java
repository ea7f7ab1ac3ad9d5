package org.wadeplan.planner.effort;

import java.util.Optional;
import org.wadeplan.planner.round.ElectricSettings;

/** Duty, frequency and pulse width hang together: duty = frequency x width. */
public final class PulseDuty {

    /** Units show duty in whole per cent, so half a point either way is only rounding; the rest is a slip. */
    private static final double TOLERANCE_PCT = 1;

    private PulseDuty() {}

    /** Share of the time with current, per cent. */
    public static double dutyPct(double frequencyHz, double pulseWidthMs) {
        return frequencyHz * pulseWidthMs / 10;
    }

    /** Width of one pulse, ms. */
    public static double pulseWidthMs(double frequencyHz, double dutyPct) {
        return dutyPct * 10 / frequencyHz;
    }

    /** Mean power of a square pulse, W: V x I x duty. */
    public static double meanPowerW(double voltageV, double currentA, double dutyPct) {
        return voltageV * currentA * dutyPct / 100;
    }

    /** A sentence where recorded settings contradict one another; empty where they agree. */
    public static Optional<String> contradiction(ElectricSettings settings) {
        double duty = dutyPct(settings.frequencyHz(), settings.pulseWidthMs());
        if (Math.abs(duty - settings.dutyPct()) <= TOLERANCE_PCT) {
            return Optional.empty();
        }
        return Optional.of("The record contradicts itself: " + Plain.number(settings.frequencyHz(), 1) + " Hz and "
                + Plain.number(settings.pulseWidthMs(), 2) + " ms make " + Plain.number(duty, 1)
                + " % duty, and it says " + Plain.number(settings.dutyPct(), 1) + " %.");
    }
}
