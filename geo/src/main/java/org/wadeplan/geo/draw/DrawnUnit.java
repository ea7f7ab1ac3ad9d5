package org.wadeplan.geo.draw;

import org.wadeplan.geo.crs.MetricPoint;

/**
 * One place that the draw fell on.
 *
 * @param code {@code D001} in the base, {@code R001} in reserve; at most 5 characters
 * @param role base or reserve
 * @param stratum the stratum that it was drawn from
 * @param turn its turn among the units of that role in its stratum, from 1
 * @param line number of the line
 * @param chainageM of the drawn point, metres from the line's upper end; equally likely anywhere in the unit
 * @param at the drawn point
 * @param unitFromM chainage of the unit's upper end, metres
 * @param unitLengthM metres
 * @param inclusionProbability of the unit in the base, above 0 and at most 1; a reserve takes it over with its place
 * @param weightM metres of stream that a base unit stands for: the stratum's length over its size
 */
public record DrawnUnit(
        String code,
        Role role,
        String stratum,
        int turn,
        int line,
        double chainageM,
        MetricPoint at,
        double unitFromM,
        double unitLengthM,
        double inclusionProbability,
        double weightM) {

    /** What a drawn unit is for. */
    public enum Role {
        BASE,
        RESERVE
    }
}
