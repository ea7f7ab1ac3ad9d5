package org.wadeplan.geo.network;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Joins the features of one stream code end to end. */
final class PieceJoin {

    /** A wider gap is not bridged even on request: the missing part has to be drawn. */
    private static final double WIDEST_GAP_M = 50;

    private final SuspectedFaults faults;

    PieceJoin(SuspectedFaults faults) {
        this.faults = faults;
    }

    /**
     * All pieces as one line.
     *
     * @return the longest piece alone where a join needs a repair that is not accepted, so that the rest can be checked
     */
    DrawnPiece join(List<DrawnPiece> pieces) {
        PieceChain chain = new PieceChain(pieces.get(0));
        LooseParts rest = new LooseParts(pieces.subList(1, pieces.size()));
        Optional<PieceFit> fit = rest.nearest(chain.first(), chain.last());
        while (fit.isPresent()) {
            DrawnPiece other = rest.remove(fit.get());
            if (!mayJoin(chain, other, fit.get())) {
                return longest(pieces);
            }
            DrawnPiece facing = fit.get().turned() ? other.turned() : other;
            if (fit.get().before()) {
                chain.addAbove(facing);
            } else {
                chain.addBelow(facing);
            }
            fit = rest.nearest(chain.first(), chain.last());
        }
        return chain.joined();
    }

    private static DrawnPiece longest(List<DrawnPiece> pieces) {
        DrawnPiece longest = pieces.get(0);
        for (DrawnPiece piece : pieces) {
            longest = piece.line().getLength() > longest.line().getLength() ? piece : longest;
        }
        return longest;
    }

    private boolean mayJoin(PieceChain chain, DrawnPiece other, PieceFit fit) {
        String code = other.code();
        SourcePlace place = other.place();
        if (fit.gapM() > WIDEST_GAP_M) {
            faults.add(Problem.error(
                    "stream-in-pieces",
                    place,
                    String.format(
                            Locale.ROOT, "its nearest end is %.0f m from the other line called %s", fit.gapM(), code),
                    "one line a stream; gaps of up to " + (int) WIDEST_GAP_M + " m can be joined on request",
                    "draw the missing part, or give one of the two another code"));
            return false;
        }
        boolean turn = !fit.turned()
                || faults.mayRepair(
                        "reverse-part:" + code,
                        "stream-part-reversed",
                        place,
                        "this part of " + code + " runs against the other part",
                        "this part is turned round");
        boolean gap = fit.gapM() <= PieceChain.SAME_PLACE_M || mayBridge(chain, other, fit);
        return turn && gap;
    }

    private boolean mayBridge(PieceChain chain, DrawnPiece other, PieceFit fit) {
        Coordinate end = fit.before() ? chain.first() : chain.last();
        return faults.mayRepair(
                "join-gap:" + other.code(),
                "stream-gap",
                other.place(),
                String.format(
                        Locale.ROOT,
                        "%s is in two pieces with a gap of %.1f m near %.0f, %.0f",
                        other.code(),
                        fit.gapM(),
                        end.x,
                        end.y),
                "the two are joined by a straight line");
    }
}
