package org.wadeplan.geo.draw;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Which drawn units are visited once some are lost: each loss is made good by the next reserve of its own stratum.
 *
 * @param entries every unit of the draw, in its order
 * @param strata how each stratum then stands and weighs
 */
public record VisitList(List<Entry> entries, List<StratumVisits> strata) {

    public VisitList {
        entries = List.copyOf(entries);
        strata = List.copyOf(strata);
    }

    /** What becomes of a unit. */
    public enum Use {
        VISIT,
        LOST,
        /** A reserve that is not needed so far. */
        HELD
    }

    /**
     * One unit and what becomes of it.
     *
     * @param standsInFor code of the base unit whose place a reserve takes
     * @param loss why it is lost
     */
    public record Entry(DrawnUnit unit, Use use, Optional<String> standsInFor, Optional<Loss> loss) {}

    /**
     * Goes through each stratum in order, base first, then as many reserves as there are losses.
     *
     * @param lossOf asked once for each unit whose turn has come, in that order; empty where it can be visited
     */
    public static VisitList of(Draw draw, Function<DrawnUnit, Optional<Loss>> lossOf) {
        List<Entry> entries = new ArrayList<>();
        List<StratumVisits> strata = new ArrayList<>();
        for (StratumRecord stratum : draw.strata()) {
            List<Entry> own = new ArrayList<>();
            Deque<String> toReplace = new ArrayDeque<>();
            for (DrawnUnit unit : draw.units()) {
                if (unit.stratum().equals(stratum.stratum())) {
                    own.add(entry(unit, toReplace, lossOf));
                }
            }
            entries.addAll(own);
            strata.add(StratumVisits.of(stratum, own));
        }
        return new VisitList(entries, strata);
    }

    private static Entry entry(DrawnUnit unit, Deque<String> toReplace, Function<DrawnUnit, Optional<Loss>> lossOf) {
        boolean reserve = unit.role() == DrawnUnit.Role.RESERVE;
        if (reserve && toReplace.isEmpty()) {
            return new Entry(unit, Use.HELD, Optional.empty(), Optional.empty());
        }
        Optional<Loss> loss = lossOf.apply(unit);
        if (loss.isPresent()) {
            if (!reserve) {
                toReplace.add(unit.code());
            }
            return new Entry(unit, Use.LOST, Optional.empty(), loss);
        }
        Optional<String> standsInFor = reserve ? Optional.of(toReplace.remove()) : Optional.empty();
        return new Entry(unit, Use.VISIT, standsInFor, Optional.empty());
    }
}
