package org.wadeplan.planner.round;

/**
 * When water asks for care before current goes in, and when current stays off. Local settings: the permit, the agency's
 * code and the licensed operator come first.
 *
 * @param lowUsCm below this ambient conductivity most units run short of voltage
 * @param highUsCm above this, current and packs are the limit
 * @param veryHighUsCm above this, another method is likely the better one
 * @param coldC below this water temperature fish respond poorly, degrees C
 * @param warmC above this, no shocking where salmonids are listed, degrees C
 * @param stopC from this water temperature on no voltage is advised at all, degrees C
 */
public record ElectricLimits(
        double lowUsCm, double highUsCm, double veryHighUsCm, double coldC, double warmC, double stopC, String source) {

    /** From memory, to be replaced by a round's own: the tighter end wherever sources give a range. */
    public static final ElectricLimits DEFAULT = new ElectricLimits(
            30,
            500,
            1000,
            5,
            18,
            22,
            "defaults of this program, from memory: check them against your own permit and code");
}
