package org.wadeplan.geo.draw;

/**
 * What to draw.
 *
 * @param size number of units to visit, 1 or more
 * @param reservePct units in reserve, in percent of the size: 25 to 100
 * @param allocation of the size to strata
 * @param longestUnitM units are at most this long, metres
 * @param reachLengthM what is surveyed at each unit, metres: a frame must hold that many of them end to end
 * @param seed the same seed draws the same units from the same frame
 */
public record DrawDesign(
        int size, int reservePct, Allocation allocation, double longestUnitM, double reachLengthM, long seed) {

    /** So that names of units fit a handheld and shares fit whole numbers. */
    public static final int LARGEST_SIZE = 9_999;

    public static final int LEAST_RESERVE_PCT = 25;
    public static final int MOST_RESERVE_PCT = 100;

    /** Short against the gap between drawn reaches, long enough that a nation stays under a million units. */
    public static final double USUAL_UNIT_M = 100;

    /** How many reserves a stratum of a size has, rounded up. */
    int reserves(int ofSize) {
        return (int) ((ofSize * (long) reservePct + 99) / 100);
    }
}
