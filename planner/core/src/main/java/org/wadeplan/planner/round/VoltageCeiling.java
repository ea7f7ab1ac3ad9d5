package org.wadeplan.planner.round;

import java.util.OptionalDouble;

/**
 * How far an operator may go in water of some conductivity: a local row, written from the permit and the agency's code.
 *
 * @param conductivityMinUsCm ambient conductivity from which the row counts, this value included, uS/cm: on a boundary the
 *     row of the more conductive water counts, whose ceiling is the lower one
 * @param voltageMaxV highest voltage, V
 * @param voltageStartV where testing begins, V
 * @param frequencyMaxHz highest frequency, Hz
 * @param pulseWidthMaxMs longest pulse, ms
 */
public record VoltageCeiling(
        double conductivityMinUsCm,
        double voltageMaxV,
        OptionalDouble voltageStartV,
        OptionalDouble frequencyMaxHz,
        OptionalDouble pulseWidthMaxMs,
        String source) {}
