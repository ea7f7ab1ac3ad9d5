package org.wadeplan.planner.effort;

import java.util.Optional;

/**
 * How voltage, current and power must change with the water for fish to feel the same: the power transfer model of Kolz
 * (1989, A power transfer theory for electrofishing), tested by Miranda and Dolan (2003, Test of a power transfer model
 * for standardized electrofishing), for electrodes that stay as they are. Conductivities are ambient, in uS/cm.
 *
 * @param fishConductivityUsCm effective conductivity of fish; 115 is the usual standard (Miranda and Dolan 2003)
 */
public record PowerTransfer(double fishConductivityUsCm) {

    /** The model matched what was measured from this conductivity (Miranda and Dolan 2003). */
    public static final double TESTED_FROM_US_CM = 12;

    /** The model matched what was measured up to this conductivity (Miranda and Dolan 2003). */
    public static final double TESTED_TO_US_CM = 1030;

    public PowerTransfer {
        requirePositive(fishConductivityUsCm, "conductivity of fish");
    }

    /** V/Vm = (1 + Cf/Cw)/2: voltage in this water by voltage where water and fish conduct alike. */
    public double voltageMultiplier(double ambientUsCm) {
        return (1 + fishConductivityUsCm / water(ambientUsCm)) / 2;
    }

    /** I/Im = (1 + Cw/Cf)/2: current in this water by current where water and fish conduct alike. */
    public double currentMultiplier(double ambientUsCm) {
        return (1 + water(ambientUsCm) / fishConductivityUsCm) / 2;
    }

    /** P/Pm = (Cw + Cf)^2 / (4 Cw Cf): power in this water by power where water and fish conduct alike; 1 at the least. */
    public double powerMultiplier(double ambientUsCm) {
        double sum = water(ambientUsCm) + fishConductivityUsCm;
        return sum * sum / (4 * ambientUsCm * fishConductivityUsCm);
    }

    /** V2 = V1 C1 (C2 + Cf) / (C2 (C1 + Cf)): a voltage that worked in one water, for another water; V. */
    public double rescaledVoltageV(double voltageV, double fromUsCm, double toUsCm) {
        return voltageV * voltageMultiplier(toUsCm) / voltageMultiplier(fromUsCm);
    }

    /** I2 = I1 (C2 + Cf) / (C1 + Cf): a current that worked in one water, for another water; A. */
    public double rescaledCurrentA(double currentA, double fromUsCm, double toUsCm) {
        return currentA * currentMultiplier(toUsCm) / currentMultiplier(fromUsCm);
    }

    /** P2 = P1 C1 (C2 + Cf)^2 / (C2 (C1 + Cf)^2): a power that worked in one water, for another water; W. */
    public double rescaledPowerW(double powerW, double fromUsCm, double toUsCm) {
        return powerW * powerMultiplier(toUsCm) / powerMultiplier(fromUsCm);
    }

    /** R = R100 x 100/Cw: resistance between the electrodes, ohm (Reynolds 2016 standardises to 100 uS/cm so). */
    public static double resistanceOhm(double resistanceAt100Ohm, double ambientUsCm) {
        return resistanceAt100Ohm * 100 / water(ambientUsCm);
    }

    /** A sentence where the model was not tested in this water; empty where it was. */
    public static Optional<String> untested(double ambientUsCm) {
        if (ambientUsCm >= TESTED_FROM_US_CM && ambientUsCm <= TESTED_TO_US_CM) {
            return Optional.empty();
        }
        return Optional.of("The power transfer model was tested from 12 to 1030 µS/cm; at "
                + Plain.number(ambientUsCm, 0) + " µS/cm nothing vouches for the advised voltage.");
    }

    private static double water(double ambientUsCm) {
        return requirePositive(ambientUsCm, "conductivity of water");
    }

    private static double requirePositive(double value, String what) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("The " + what + " must be above 0 uS/cm, not " + value);
        }
        return value;
    }
}
