package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;

/** Works out the turnaround of every kit set for every ordered pair of the round's waters. */
public final class TurnaroundPlanner {

    private TurnaroundPlanner() {}

    /** Rows by kit set, then water left, then water entered, in the round's order. */
    public static TurnaroundTable table(Round round) {
        TransferRules rules = new TransferRules(round);
        List<Turnaround> rows = new ArrayList<>();
        for (KitSet kitSet : round.store().kitSets()) {
            for (Water from : round.waters()) {
                for (Water to : round.waters()) {
                    rows.add(rules.needed(kitSet, List.of(from.id()), to.id()));
                }
            }
        }
        return new TurnaroundTable(List.copyOf(rows));
    }
}
