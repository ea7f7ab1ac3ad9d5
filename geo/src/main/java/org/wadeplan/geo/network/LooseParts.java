package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * The parts of a stream that are not joined yet. Parts that meet exactly are found at once, so that a river of thousands
 * of parts is joined quickly; only gaps are searched for among all.
 */
final class LooseParts {

    private final List<Optional<DrawnPiece>> parts = new ArrayList<>();
    private final Map<Coordinate, TreeSet<Integer>> byEnd = new HashMap<>();
    private int left;

    LooseParts(List<DrawnPiece> pieces) {
        for (DrawnPiece piece : pieces) {
            ends(piece).forEach(end -> byEnd.computeIfAbsent(end, unseen -> new TreeSet<>())
                    .add(parts.size()));
            parts.add(Optional.of(piece));
        }
        left = pieces.size();
    }

    private static List<Coordinate> ends(DrawnPiece piece) {
        LineString line = piece.line();
        return List.of(line.getCoordinateN(0), line.getCoordinateN(line.getNumPoints() - 1));
    }

    DrawnPiece remove(PieceFit fit) {
        DrawnPiece piece = parts.get(fit.part()).orElseThrow();
        parts.set(fit.part(), Optional.empty());
        ends(piece).forEach(end -> byEnd.getOrDefault(end, new TreeSet<>()).remove(fit.part()));
        left--;
        return piece;
    }

    /** The part that fits best to a line between two ends, of equal ones the first; empty where none is left. */
    Optional<PieceFit> nearest(Coordinate first, Coordinate last) {
        TreeSet<Integer> meeting = new TreeSet<>(byEnd.getOrDefault(first, new TreeSet<>()));
        meeting.addAll(byEnd.getOrDefault(last, new TreeSet<>()));
        if (!meeting.isEmpty()) {
            return Optional.of(best(meeting.first(), first, last));
        }
        Optional<PieceFit> nearest = Optional.empty();
        for (int part = 0; left > 0 && part < parts.size(); part++) {
            if (parts.get(part).isPresent()) {
                PieceFit fit = best(part, first, last);
                boolean nearer = nearest.map(known -> fit.gapM() < known.gapM()).orElse(true);
                nearest = nearer ? Optional.of(fit) : nearest;
            }
        }
        return nearest;
    }

    private PieceFit best(int part, Coordinate first, Coordinate last) {
        List<Coordinate> ends = ends(parts.get(part).orElseThrow());
        PieceFit best = new PieceFit(part, false, false, last.distance(ends.get(0)));
        for (PieceFit fit : List.of(
                new PieceFit(part, true, false, ends.get(1).distance(first)),
                new PieceFit(part, false, true, last.distance(ends.get(1))),
                new PieceFit(part, true, true, ends.get(0).distance(first)))) {
            best = fit.gapM() < best.gapM() ? fit : best;
        }
        return best;
    }
}
