package org.wadeplan.geo.lines;

/**
 * How every line is cut into whole reaches.
 *
 * @param lengthM length of a reach along the line, in metres
 * @param subReaches into how many equal parts each is staked out
 * @param from at which end of the line the first reach begins
 */
public record CutRule(double lengthM, int subReaches, From from) {

    /** Which end of a line the first reach begins at; what is left over, less than a reach, stays at the other. */
    public enum From {
        /** The last vertex: the downstream end of a line that runs downstream. */
        LAST_VERTEX,
        /** The first vertex, as the line was drawn. */
        FIRST_VERTEX
    }

    public CutRule {
        if (!(lengthM > 0 && lengthM < Double.POSITIVE_INFINITY) || subReaches < 1) {
            throw new IllegalArgumentException(
                    "A reach needs a length and a sub-reach, not " + lengthM + " m in " + subReaches);
        }
    }

    /** Metres between two stations. */
    public double subReachM() {
        return lengthM / subReaches;
    }

    /** Stations of one reach: both its ends and the ends of its sub-reaches between. */
    public int stations() {
        return subReaches + 1;
    }

    boolean fromLast() {
        return from == From.LAST_VERTEX;
    }
}
