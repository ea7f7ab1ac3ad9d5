package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.problem.Problem;

/** Finds vertices where a line runs out and straight back, which water does not. */
final class SpikeCheck {

    /** Cosine of the turn at a spike: 165 degrees or more. Sharper than mapped meanders, common practice. */
    private static final double SPIKE_COSINE = Math.cos(Math.toRadians(165));

    private SpikeCheck() {}

    static DrawnPiece check(DrawnPiece piece, SuspectedFaults faults) {
        List<Integer> spikes = spikes(piece.line());
        if (spikes.isEmpty()) {
            return piece;
        }
        List<Coordinate> kept = without(piece.line(), spikes);
        if (kept.size() < 2) {
            faults.add(Problem.error(
                    "stream-out-and-back",
                    piece.place(),
                    "the line does nothing but run out and straight back",
                    "a line as the water runs",
                    "draw it again"));
            return piece;
        }
        return asked(
                piece, spikes, piece.line().getFactory().createLineString(kept.toArray(new Coordinate[0])), faults);
    }

    private static DrawnPiece asked(
            DrawnPiece piece, List<Integer> spikes, LineString without, SuspectedFaults faults) {
        Coordinate tip = piece.line().getCoordinateN(spikes.get(0));
        String found = String.format(
                Locale.ROOT,
                "the line runs out to %.0f, %.0f (vertex %d) and straight back%s, which adds %.0f m",
                tip.x,
                tip.y,
                spikes.get(0) + 1,
                spikes.size() > 1 ? ", and so at " + (spikes.size() - 1) + " more" : "",
                piece.line().getLength() - without.getLength());
        boolean repair = faults.mayRepair(
                "drop-spike:" + piece.code(), "stream-spike", piece.place(), found, "that vertex is left out");
        return repair ? piece.with(without) : piece;
    }

    private static List<Integer> spikes(LineString line) {
        List<Integer> spikes = new ArrayList<>();
        for (int i = 1; i < line.getNumPoints() - 1; i++) {
            Coordinate before = line.getCoordinateN(i - 1);
            Coordinate at = line.getCoordinateN(i);
            Coordinate after = line.getCoordinateN(i + 1);
            double along = (at.x - before.x) * (after.x - at.x) + (at.y - before.y) * (after.y - at.y);
            if (along < SPIKE_COSINE * before.distance(at) * at.distance(after)) {
                spikes.add(i);
            }
        }
        return spikes;
    }

    private static List<Coordinate> without(LineString line, List<Integer> spikes) {
        List<Coordinate> kept = new ArrayList<>();
        for (int i = 0; i < line.getNumPoints(); i++) {
            Coordinate vertex = line.getCoordinateN(i);
            boolean repeats = !kept.isEmpty() && kept.get(kept.size() - 1).equals2D(vertex);
            if (!spikes.contains(i) && !repeats) {
                kept.add(vertex);
            }
        }
        return kept;
    }
}
