package org.wadeplan.planner.effort;

/** Minutes and packs from energy. A check figure: a pack's seconds measured in the field say more. */
public final class BatteryEnergy {

    private static final double MIN_PER_H = 60;

    private BatteryEnergy() {}

    /** What a pack may give to the electrodes, Wh: energy x depth of discharge x efficiency x health. */
    public static double usableWh(double packWh, double depthOfDischarge, double efficiency, double healthPct) {
        return packWh * depthOfDischarge * efficiency * healthPct / 100;
    }

    /** Button minutes from usable energy at a mean power, min: 60 Wh/W. */
    public static double minutes(double usableWh, double meanW) {
        return MIN_PER_H * usableWh / positive(meanW, "mean power");
    }

    /**
     * Button minutes of a lead-acid pack by Peukert's law (1897), min: t = H (C/(I H))^k, of which the share that may be
     * discharged counts; I = mean power/(voltage x efficiency).
     *
     * @param capacityAh rated capacity C, Ah, at the rated time H
     * @param ratedH rated time of discharge, h; 20 for most lead-acid packs
     * @param exponent 1.1 to 1.3 for lead-acid
     */
    public static double peukertMinutes(double currentA, double capacityAh, double ratedH, double exponent) {
        double ratio = capacityAh / (positive(currentA, "current") * ratedH);
        return MIN_PER_H * ratedH * Math.pow(ratio, exponent);
    }

    /** Whole packs for the energy needed, at least one. */
    public static int packs(double neededWh, double usableWhPerPack) {
        return Math.max(1, Plain.ceil(neededWh / positive(usableWhPerPack, "usable energy")));
    }

    private static double positive(double value, String what) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("The " + what + " must be above 0, not " + value);
        }
        return value;
    }
}
