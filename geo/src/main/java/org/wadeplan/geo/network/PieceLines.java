package org.wadeplan.geo.network;

import java.util.List;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

/** Drawn pieces as a set of lines under the same numbers. */
final class PieceLines {

    private PieceLines() {}

    static LineSet of(List<DrawnPiece> pieces) {
        LineSetBuilder lines = new LineSetBuilder();
        for (DrawnPiece piece : pieces) {
            if (!lines.add(piece.code(), piece.line())) {
                throw new IllegalStateException("A piece without length came through: " + piece.place());
            }
        }
        return lines.build();
    }
}
