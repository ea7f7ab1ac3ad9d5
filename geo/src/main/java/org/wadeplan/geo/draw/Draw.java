package org.wadeplan.geo.draw;

import java.util.List;

/**
 * A finished draw, with all that it takes to repeat and to weigh it.
 *
 * @param design what was asked for
 * @param framePrint SHA-256 of the frame
 * @param frame what became of the mapped length
 * @param strata in their order
 * @param units base before reserves within each stratum, strata in their order; each in the order in which to use them
 * @param balance of the base over the whole frame
 */
public record Draw(
        DrawDesign design,
        String framePrint,
        FrameLengths frame,
        List<StratumRecord> strata,
        List<DrawnUnit> units,
        BalanceRecord balance) {

    public Draw {
        strata = List.copyOf(strata);
        units = List.copyOf(units);
    }
}
