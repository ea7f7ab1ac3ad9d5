package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Joins the features of one stream code end to end. */
final class PieceJoin {

    /** Ends this near are the same place: the precision of map files, not a gap. */
    private static final double SAME_PLACE_M = 0.01;

    /** A wider gap is not bridged even on request: the missing part has to be drawn. */
    private static final double WIDEST_GAP_M = 50;

    private final SuspectedFaults faults;

    PieceJoin(SuspectedFaults faults) {
        this.faults = faults;
    }

    /** One of the four ways in which the ends of two lines can be laid together. */
    private record Fit(int other, boolean before, boolean turned, double gapM) {}

    /**
     * All pieces as one line.
     *
     * @return the longest piece alone where a join needs a repair that is not accepted, so that the rest can be checked
     */
    DrawnPiece join(List<DrawnPiece> pieces) {
        List<DrawnPiece> rest = new ArrayList<>(pieces);
        DrawnPiece joined = rest.remove(0);
        while (!rest.isEmpty()) {
            Fit fit = nearest(joined, rest);
            DrawnPiece other = rest.remove(fit.other());
            if (!mayJoin(joined, other, fit)) {
                return longest(pieces);
            }
            DrawnPiece facing = fit.turned() ? other.turned() : other;
            joined = fit.before() ? chained(facing, joined) : chained(joined, facing);
        }
        return joined;
    }

    private static DrawnPiece longest(List<DrawnPiece> pieces) {
        DrawnPiece longest = pieces.get(0);
        for (DrawnPiece piece : pieces) {
            longest = piece.line().getLength() > longest.line().getLength() ? piece : longest;
        }
        return longest;
    }

    private static Fit nearest(DrawnPiece joined, List<DrawnPiece> rest) {
        Fit best = new Fit(0, false, false, Double.POSITIVE_INFINITY);
        for (int i = 0; i < rest.size(); i++) {
            LineString other = rest.get(i).line();
            for (Fit fit : List.of(
                    new Fit(i, false, false, last(joined.line()).distance(first(other))),
                    new Fit(i, true, false, last(other).distance(first(joined.line()))),
                    new Fit(i, false, true, last(joined.line()).distance(last(other))),
                    new Fit(i, true, true, first(other).distance(first(joined.line()))))) {
                best = fit.gapM() < best.gapM() ? fit : best;
            }
        }
        return best;
    }

    private boolean mayJoin(DrawnPiece joined, DrawnPiece other, Fit fit) {
        String code = joined.code();
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
        boolean gap = fit.gapM() <= SAME_PLACE_M
                || faults.mayRepair(
                        "join-gap:" + code,
                        "stream-gap",
                        place,
                        String.format(
                                Locale.ROOT,
                                "%s is in two pieces with a gap of %.1f m near %.0f, %.0f",
                                code,
                                fit.gapM(),
                                end(joined, fit).x,
                                end(joined, fit).y),
                        "the two are joined by a straight line");
        return turn && gap;
    }

    private static Coordinate end(DrawnPiece joined, Fit fit) {
        return fit.before() ? first(joined.line()) : last(joined.line());
    }

    private static DrawnPiece chained(DrawnPiece upper, DrawnPiece lower) {
        List<Coordinate> vertices = new ArrayList<>(Arrays.asList(upper.line().getCoordinates()));
        List<Coordinate> more = Arrays.asList(lower.line().getCoordinates());
        boolean touching = last(upper.line()).distance(more.get(0)) <= SAME_PLACE_M;
        vertices.addAll(touching ? more.subList(1, more.size()) : more);
        return new DrawnPiece(
                upper.code(),
                upper.name().or(lower::name),
                upper.catchment().or(lower::catchment),
                upper.flowStated() && lower.flowStated(),
                upper.line().getFactory().createLineString(vertices.toArray(new Coordinate[0])),
                upper.place());
    }

    private static Coordinate first(LineString line) {
        return line.getCoordinateN(0);
    }

    private static Coordinate last(LineString line) {
        return line.getCoordinateN(line.getNumPoints() - 1);
    }
}
