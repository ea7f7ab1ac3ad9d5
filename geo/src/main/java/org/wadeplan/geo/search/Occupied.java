package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wadeplan.geo.network.LinePlace;

/** What the candidates chosen so far take up, with the least gap around each along the network. */
final class Occupied {

    private final Runs runs;
    private final NetworkSpread spread;
    private final double gapM;
    private final Map<Integer, List<double[]>> taken = new HashMap<>();

    Occupied(Runs runs, NetworkSpread spread, double gapM) {
        this.runs = runs;
        this.spread = spread;
        this.gapM = gapM;
    }

    boolean touches(int run, double fromM, double toM) {
        for (double[] stretch : taken.getOrDefault(run, List.of())) {
            if (stretch[0] < toM - Fitting.ROUNDING_M && stretch[1] > fromM + Fitting.ROUNDING_M) {
                return true;
            }
        }
        return false;
    }

    void take(int run, double fromM, double toM) {
        taken.computeIfAbsent(run, none -> new ArrayList<>()).add(new double[] {fromM, toM});
        if (gapM > 0) {
            around(runs.place(run, fromM));
            around(runs.place(run, toM));
        }
    }

    private void around(LinePlace end) {
        spread.fromPlace(end, gapM, (piece, fromM, toM, fromDistM, toDistM) -> taken.computeIfAbsent(
                        runs.runOf(piece), none -> new ArrayList<>())
                .add(new double[] {runs.measureM(piece, fromM), runs.measureM(piece, toM)}));
    }
}
