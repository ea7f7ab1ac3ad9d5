package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;
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

    static final String NOTHING_TELLS =
            "nothing tells which way the water runs: no flow column, no other line that it joins, no known mouth";

    private final List<DrawnPiece> all;
    private final LineSet lines;
    private final EndContacts contacts;
    private final StreamHints hints;
    private final SuspectedFaults faults;
    private final BitSet undecided = new BitSet();

    FlowCheck(List<DrawnPiece> all, StreamHints hints, SuspectedFaults faults) {
        this.all = all;
        this.lines = PieceLines.of(all);
        this.contacts = EndContacts.of(lines, MEETS_M, end -> true);
        this.hints = hints;
        this.faults = faults;
    }

    /** All pieces, those turned round that may be. */
    List<DrawnPiece> checked() {
        List<DrawnPiece> checked = new ArrayList<>();
        for (int line = 0; line < all.size(); line++) {
            checked.add(check(line));
        }
        return checked;
    }

    /** Positions of the pieces about which nothing tells, and nobody has said, which way the water runs. */
    BitSet undecided() {
        return undecided;
    }

    /** What something tells: whether the line is drawn with the water, and how that is known. */
    private record Evidence(boolean withWater, String because) {}

    private DrawnPiece check(int line) {
        DrawnPiece piece = all.get(line);
        Optional<Evidence> network = fromNetwork(line);
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
            undecided.set(line, !piece.flowStated() && !faults.answered("reverse:" + piece.code()));
            return piece.flowStated() || undecided.get(line) ? piece : turnedAsAnswered(piece, NOTHING_TELLS);
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
        String found =
                "which way the water runs is told in two ways: " + network.because() + ", but " + mouth.because();
        if (faults.answered("reverse:" + piece.code())) {
            return turnedAsAnswered(piece, found);
        }
        faults.add(question(piece, "stream-flow-contradiction", found));
        return piece;
    }

    private DrawnPiece turnedAsAnswered(DrawnPiece piece, String found) {
        note(piece, found + "; turned round, as accepted by reverse:" + piece.code());
        return piece.turned();
    }

    /** The question which way the water runs along one line. */
    static Problem question(DrawnPiece piece, String code, String found) {
        return Problem.error(
                code,
                piece.place().column("flow"),
                found,
                PieceReader.AS_DRAWN + " or " + PieceReader.AGAINST + " in column flow",
                "fill in the flow column, or answer with --accept as-drawn:" + piece.code() + " or --accept reverse:"
                        + piece.code());
    }

    private void note(DrawnPiece piece, String found) {
        faults.add(Problem.note("stream-flow", piece.place(), found, "", "nothing if that is right"));
    }

    private Optional<Evidence> fromNetwork(int line) {
        Optional<String> atFirst = joinedAt(2 * line);
        Optional<String> atLast = joinedAt(2 * line + 1);
        if (atFirst.isPresent() == atLast.isPresent()) {
            return Optional.empty();
        }
        String other = atFirst.or(() -> atLast).orElseThrow();
        String which = atLast.isPresent() ? "last" : "first";
        return Optional.of(new Evidence(
                atLast.isPresent(),
                "its " + which + " vertex lies on the middle of " + other + ", so it is the mouth"));
    }

    /** The first line on whose middle an end lies. Where two lines meet end to end, either may be the lower one. */
    private Optional<String> joinedAt(int end) {
        Optional<String> joined = Optional.empty();
        for (int contact = contacts.first(end); contact >= 0; contact = contacts.next(contact)) {
            int other = contacts.line(contact);
            double atM = contacts.chainageM(contact);
            if (atM > MEETS_M && atM < lines.lengthM(other) - MEETS_M) {
                joined = Optional.of(all.get(other).code());
            }
        }
        return joined;
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
