package org.wadeplan.geo.search;

/**
 * How well a figure suits: wholly between two values, not at all beyond two others, in between in proportion.
 *
 * @param zeroBelow not at all at or below this
 * @param goodFrom wholly from here
 * @param goodTo wholly up to here
 * @param zeroAbove not at all at or above this
 */
public record Preference(double zeroBelow, double goodFrom, double goodTo, double zeroAbove) {

    public Preference {
        if (!(zeroBelow <= goodFrom && goodFrom <= goodTo && goodTo <= zeroAbove)) {
            throw new IllegalArgumentException(
                    "These must not fall: " + zeroBelow + ", " + goodFrom + ", " + goodTo + ", " + zeroAbove);
        }
    }

    /** 0 to 1. */
    public double share(double value) {
        if (value >= goodFrom && value <= goodTo) {
            return 1;
        }
        double share = value < goodFrom
                ? (value - zeroBelow) / (goodFrom - zeroBelow)
                : (zeroAbove - value) / (zeroAbove - goodTo);
        return Math.min(1, Math.max(0, share));
    }
}
