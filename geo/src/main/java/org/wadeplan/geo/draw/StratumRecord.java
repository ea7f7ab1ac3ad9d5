package org.wadeplan.geo.draw;

/**
 * What was drawn from one stratum.
 *
 * @param stratum its name
 * @param lengthM what could be drawn from, metres
 * @param size units in the base
 * @param reserves units in reserve
 * @param weightM metres of stream that each base unit stands for
 * @param unitCount units that the stratum was cut into
 * @param longestUnitM no unit is longer, metres
 * @param balance of the base within the stratum: see {@link BalanceRecord}
 */
public record StratumRecord(
        String stratum,
        double lengthM,
        int size,
        int reserves,
        double weightM,
        int unitCount,
        double longestUnitM,
        double balance) {}
