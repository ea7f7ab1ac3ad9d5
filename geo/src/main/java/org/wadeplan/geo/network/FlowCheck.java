package org.wadeplan.geo.network;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.problem.Problem;

/**
 * Decides which way the water runs along each line, and asks where that cannot be told.
 *
 * <p>Three things can tell: the file's own {@code flow} column; the network, since an end that lies on the middle of
 * another line is a mouth; and roughly where the mouth is known to be. A line that seems to run the wrong way is never
 * turned without consent, because every reach on it would start at the wrong end.
 */
final class FlowCheck {

    /** An end this near to another line, in metres, may meet it. */
    private static final double MEETS_M = 1;

    /** The known mouth tells only where one end is at least this many times nearer to it than the other. */
    private static final double CLEARLY_NEARER = 2;

    private final List<DrawnPiece> all;
    private final StreamHints hints;
    private final SuspectedFaults faults;

    FlowCheck(List<DrawnPiece> all, StreamHints hints, SuspectedFaults faults) {
        this.all = all;
        this.hints = hints;
        this.faults = faults;
    }

    /** What something tells: whether the line is drawn with the water, and how that is known. */
    private record Evidence(boolean withWater, String because) {}

    DrawnPiece check(DrawnPiece piece) {
        Optional<Evidence> network = fromNetwork(piece);
        Optional<Evidence> mouth = fromMouth(piece);
        if (faults.answered("as-drawn:" + piece.code())) {
            note(piece, "taken as drawn, first vertex at the source, as accepted by as-drawn:" + piece.code());
            return piece;
        }
        if (network.isPresent()
                && mouth.isPresent()
                && network.get().withWater() != mouth.get().withWater()) {
            return contradiction(piece, network.get(), mouth.get());
        }
        Optional<Evidence> evidence = network.or(() -> mouth);
        if (evidence.isEmpty()) {
            return piece.flowStated() ? piece : unknown(piece);
        }
        if (evidence.get().withWater()) {
            if (!piece.flowStated()) {
                note(piece, "drawn source to mouth, because " + evidence.get().because());
            }
            return piece;
        }
        return reversed(piece, evidence.get());
    }

    private DrawnPiece reversed(DrawnPiece piece, Evidence evidence) {
        String stated = piece.flowStated() ? "although its flow column says otherwise, " : "";
        boolean turn = faults.mayRepair(
                "reverse:" + piece.code(),
                "stream-reversed",
                piece.place(),
                stated + "the line seems to run from mouth to source: " + evidence.because()
                        + " (if it is right as drawn, say --accept as-drawn:" + piece.code() + ")",
                "it is turned round");
        return turn ? piece.turned() : piece;
    }

    private DrawnPiece contradiction(DrawnPiece piece, Evidence network, Evidence mouth) {
        return asked(
                piece,
                "stream-flow-contradiction",
                "which way the water runs is told in two ways: " + network.because() + ", but " + mouth.because());
    }

    private DrawnPiece unknown(DrawnPiece piece) {
        return asked(
                piece,
                "stream-flow-unknown",
                "nothing tells which way the water runs: no flow column, no other line that it joins, no known mouth");
    }

    private DrawnPiece asked(DrawnPiece piece, String code, String found) {
        if (faults.answered("reverse:" + piece.code())) {
            note(piece, found + "; turned round, as accepted by reverse:" + piece.code());
            return piece.turned();
        }
        faults.add(Problem.error(
                code,
                piece.place().column("flow"),
                found,
                PieceReader.AS_DRAWN + " or " + PieceReader.AGAINST + " in column flow",
                "fill in the flow column, or answer with --accept as-drawn:" + piece.code() + " or --accept reverse:"
                        + piece.code()));
        return piece;
    }

    private void note(DrawnPiece piece, String found) {
        faults.add(Problem.note("stream-flow", piece.place(), found, "", "nothing if that is right"));
    }

    private Optional<Evidence> fromNetwork(DrawnPiece piece) {
        Optional<String> atFirst = joinedAt(piece, piece.line().getCoordinateN(0));
        Optional<String> atLast = joinedAt(piece, last(piece));
        if (atFirst.isPresent() == atLast.isPresent()) {
            return Optional.empty();
        }
        String other = atFirst.or(() -> atLast).orElseThrow();
        String which = atLast.isPresent() ? "last" : "first";
        return Optional.of(new Evidence(
                atLast.isPresent(),
                "its " + which + " vertex lies on the middle of " + other + ", so it is the mouth"));
    }

    /** The line on whose middle an end lies. Where two lines meet end to end, either may be the lower one. */
    private Optional<String> joinedAt(DrawnPiece piece, Coordinate end) {
        MetricPoint place = new MetricPoint(end.x, end.y);
        for (DrawnPiece other : all) {
            if (!other.code().equals(piece.code()) && isNear(other, end)) {
                LineMeasure measure = new LineMeasure(other.line());
                LineMeasure.Foot foot = measure.foot(place);
                boolean middle = foot.chainageM() > MEETS_M && foot.chainageM() < measure.lengthM() - MEETS_M;
                if (foot.distanceM() <= MEETS_M && middle) {
                    return Optional.of(other.code());
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isNear(DrawnPiece other, Coordinate end) {
        Envelope near = new Envelope(other.line().getEnvelopeInternal());
        near.expandBy(MEETS_M);
        return near.contains(end);
    }

    private Optional<Evidence> fromMouth(DrawnPiece piece) {
        MetricPoint mouth = hints.mouths().get(piece.code());
        if (mouth == null) {
            return Optional.empty();
        }
        Coordinate known = new Coordinate(mouth.eastM(), mouth.northM());
        double firstM = known.distance(piece.line().getCoordinateN(0));
        double lastM = known.distance(last(piece));
        if (Math.max(firstM, lastM) < CLEARLY_NEARER * Math.min(firstM, lastM)) {
            return Optional.empty();
        }
        return Optional.of(new Evidence(
                lastM < firstM,
                String.format(
                        Locale.ROOT,
                        "its first vertex is %.0f m and its last %.0f m from the known mouth",
                        firstM,
                        lastM)));
    }

    private static Coordinate last(DrawnPiece piece) {
        return piece.line().getCoordinateN(piece.line().getNumPoints() - 1);
    }
}
