package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

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
        Coordinate tip = piece.line().getCoordinateN(spikes.get(0));
        LineString without = without(piece.line(), spikes);
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

    private static LineString without(LineString line, List<Integer> spikes) {
        List<Coordinate> kept = new ArrayList<>();
        for (int i = 0; i < line.getNumPoints(); i++) {
            Coordinate vertex = line.getCoordinateN(i);
            boolean repeats = !kept.isEmpty() && kept.get(kept.size() - 1).equals2D(vertex);
            if (!spikes.contains(i) && !repeats) {
                kept.add(vertex);
            }
        }
        return line.getFactory().createLineString(kept.toArray(new Coordinate[0]));
    }
}
