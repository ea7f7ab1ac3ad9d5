package org.wadeplan.geo.reach;

/**
 * How long a reach is and into how many sub-reaches it falls.
 *
 * @param lengthM length along the line in metres, above 0
 * @param subReachCount number of equal sub-reaches, 1 to 26 because they are lettered
 * @param source where the rule comes from
 */
public record ReachRule(double lengthM, int subReachCount, String source) {

    public ReachRule {
        if (!(lengthM > 0) || subReachCount < 1 || subReachCount > 26) {
            throw new IllegalArgumentException("A reach needs a length above 0 m and 1 to 26 sub-reaches, not "
                    + lengthM + " and " + subReachCount);
        }
    }

    public double subReachLengthM() {
        return lengthM / subReachCount;
    }

    public int stakeCount() {
        return subReachCount + 1;
    }
}
