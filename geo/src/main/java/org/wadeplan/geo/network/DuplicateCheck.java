package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;

/** Finds lines that are drawn twice, in the same direction or in the other. */
final class DuplicateCheck {

    private final SuspectedFaults faults;
    private final Map<Long, List<DrawnPiece>> kept = new HashMap<>();

    DuplicateCheck(SuspectedFaults faults) {
        this.faults = faults;
    }

    /**
     * Whether to go on with a piece: not where it repeats an earlier one and may be dropped, nor where it repeats one of its
     * own stream, which could not be joined to itself.
     */
    boolean keeps(DrawnPiece piece) {
        List<DrawnPiece> alike = kept.computeIfAbsent(shapeHash(piece.line()), unseen -> new ArrayList<>(1));
        Optional<DrawnPiece> twin =
                alike.stream().filter(other -> isSame(other, piece)).findFirst();
        if (twin.isEmpty()) {
            alike.add(piece);
            return true;
        }
        boolean dropped = faults.mayRepair(
                "drop-duplicate:" + piece.feature(),
                "stream-duplicate",
                piece.place(),
                String.format(
                        Locale.ROOT,
                        "the line is drawn twice: it has the shape of feature %s (%s)%s, %.0f m long",
                        twin.get().feature(),
                        twin.get().code(),
                        runsAlike(twin.get().line(), piece.line()) ? "" : ", in the other direction",
                        piece.line().getLength()),
                "this feature is left out");
        return !dropped && !twin.get().code().equals(piece.code());
    }

    private static boolean isSame(DrawnPiece one, DrawnPiece other) {
        return runsAlike(one.line(), other.line()) || runsAgainst(one.line(), other.line());
    }

    private static boolean runsAlike(LineString one, LineString other) {
        return one.getNumPoints() == other.getNumPoints() && matches(one, other, false);
    }

    private static boolean runsAgainst(LineString one, LineString other) {
        return one.getNumPoints() == other.getNumPoints() && matches(one, other, true);
    }

    private static boolean matches(LineString one, LineString other, boolean backwards) {
        CoordinateSequence a = one.getCoordinateSequence();
        CoordinateSequence b = other.getCoordinateSequence();
        for (int i = 0; i < a.size(); i++) {
            int j = backwards ? b.size() - 1 - i : i;
            if (a.getX(i) != b.getX(j) || a.getY(i) != b.getY(j)) {
                return false;
            }
        }
        return true;
    }

    /** The same in both directions. */
    private static long shapeHash(LineString line) {
        CoordinateSequence vertices = line.getCoordinateSequence();
        long sum = vertices.size();
        for (int i = 0; i < vertices.size(); i++) {
            sum += SharedVertices.mixed(vertices.getX(i), vertices.getY(i));
        }
        return sum;
    }
}
