package org.wadeplan.planner.decon;

import java.util.List;
import java.util.Optional;

/** For every kit set and every ordered pair of waters, the turnaround. The pair of a water with itself is in it too. */
public record TurnaroundTable(List<Turnaround> rows) {

    public Optional<Turnaround> find(String kitSet, String fromWater, String toWater) {
        return rows.stream()
                .filter(row -> row.kitSet().equals(kitSet)
                        && row.fromWater().equals(fromWater)
                        && row.toWater().equals(toWater))
                .findFirst();
    }
}
