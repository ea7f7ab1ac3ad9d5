package org.wadeplan.geo.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/** Pieces of one stream laid end to end, from the uppermost down. */
final class PieceChain {

    /** Ends this near are the same place: the precision of map files, not a gap. */
    static final double SAME_PLACE_M = 0.01;

    private final Deque<DrawnPiece> pieces = new ArrayDeque<>();

    PieceChain(DrawnPiece piece) {
        pieces.add(piece);
    }

    void addAbove(DrawnPiece piece) {
        pieces.addFirst(piece);
    }

    void addBelow(DrawnPiece piece) {
        pieces.addLast(piece);
    }

    Coordinate first() {
        return pieces.getFirst().line().getCoordinateN(0);
    }

    Coordinate last() {
        LineString line = pieces.getLast().line();
        return line.getCoordinateN(line.getNumPoints() - 1);
    }

    /** One piece of all; it has the place of the uppermost, and the first name and catchment from above. */
    DrawnPiece joined() {
        DrawnPiece upper = pieces.getFirst();
        if (pieces.size() == 1) {
            return upper;
        }
        List<Coordinate> vertices = new ArrayList<>();
        Optional<String> name = Optional.empty();
        Optional<String> catchment = Optional.empty();
        boolean flowStated = true;
        for (DrawnPiece piece : pieces) {
            add(piece.line(), vertices);
            name = name.or(piece::name);
            catchment = catchment.or(piece::catchment);
            flowStated &= piece.flowStated();
        }
        LineString line = upper.line().getFactory().createLineString(vertices.toArray(new Coordinate[0]));
        return new DrawnPiece(upper.feature(), upper.code(), name, catchment, flowStated, line, upper.place());
    }

    private static void add(LineString line, List<Coordinate> vertices) {
        List<Coordinate> more = Arrays.asList(line.getCoordinates());
        boolean touching =
                !vertices.isEmpty() && vertices.get(vertices.size() - 1).distance(more.get(0)) <= SAME_PLACE_M;
        vertices.addAll(touching ? more.subList(1, more.size()) : more);
    }
}
