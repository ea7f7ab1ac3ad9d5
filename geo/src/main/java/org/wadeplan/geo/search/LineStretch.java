package org.wadeplan.geo.search;

/**
 * A stretch of one line.
 *
 * @param line number of the line
 * @param fromM chainage of its upper end, metres
 * @param toM chainage of its lower end, metres
 */
public record LineStretch(int line, double fromM, double toM) {

    public double lengthM() {
        return toM - fromM;
    }
}
