package org.wadeplan.planner.kit;

import java.util.List;

/**
 * Loads for the week and what they lack.
 *
 * @param shortages by date, then kind: what is needed and cannot go out
 * @param vehicles crew-days whose vehicle may not be on the road, kept apart because the way out is another vehicle
 * @param spares kinds that are enough, without the spare that is asked for: a note, not a shortage
 * @param stock what is used up, burnt down day by day
 */
public record KitPlan(
        List<CrewDayLoad> loads,
        List<Shortage> shortages,
        List<Shortage> vehicles,
        List<SpareNote> spares,
        List<StockLine> stock) {

    /** Loads with nothing to say about vehicles, spares and stock. */
    public KitPlan(List<CrewDayLoad> loads, List<Shortage> shortages) {
        this(loads, shortages, List.of(), List.of(), List.of());
    }

    /** Whether anything is short on any day, a vehicle too. */
    public boolean anythingShort() {
        return !shortages.isEmpty() || !vehicles.isEmpty();
    }
}
