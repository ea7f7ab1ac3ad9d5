package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wadeplan.geo.problem.Problem;

/**
 * Decides which way the water runs along lines that hang together, by the fall of all of them on the elevation grid, and
 * asks once for all where that is not clear. Lines whose direction is known already have no part in it, except that a
 * network that is said to run uphill is asked about as a whole.
 */
final class FlowVote {

    private static final int MOST_NAMED = 3;

    private final List<DrawnPiece> pieces;
    private final StreamRules rules;
    private final SuspectedFaults faults;

    FlowVote(List<DrawnPiece> pieces, StreamRules rules, SuspectedFaults faults) {
        this.pieces = new ArrayList<>(pieces);
        this.rules = rules;
        this.faults = faults;
    }

    /**
     * All pieces, those turned round that may be.
     *
     * @param undecided positions of those whose direction nothing else has told
     */
    List<DrawnPiece> decided(BitSet undecided) {
        StreamGraph graph = StreamNoding.graph(PieceLines.of(pieces), rules.snapToleranceM());
        for (int[] connected : ConnectedLines.of(graph)) {
            int[] open = IntStream.of(connected).filter(undecided::get).toArray();
            if (open.length > 0) {
                decide(open);
            } else {
                doubt(connected);
            }
        }
        return pieces;
    }

    private FallVote vote(int[] lines) {
        FallVote vote = FallVote.NONE;
        for (int line : lines) {
            vote = vote.with(pieces.get(line).line(), rules);
        }
        return vote;
    }

    private void decide(int[] open) {
        FallVote vote = vote(open);
        DrawnPiece first = pieces.get(open[0]);
        if (open.length > 1 && faults.answered("as-drawn-all:" + first.code())) {
            note(first, named(open) + " taken as drawn, as accepted by as-drawn-all:" + first.code());
        } else if (vote.isClearlyDown()) {
            note(first, named(open) + " drawn source to mouth, because of " + connected(open) + vote.words());
        } else if (vote.isClearlyUp()) {
            mayTurn(open, vote);
        } else {
            ask(open, vote);
        }
    }

    private void mayTurn(int[] open, FallVote vote) {
        DrawnPiece first = pieces.get(open[0]);
        String one = open.length == 1 ? "reverse:" : "reverse-all:";
        boolean turn = faults.mayRepair(
                one + first.code(),
                "stream-reversed",
                first.place(),
                named(open) + " run from mouth to source: of " + connected(open) + vote.words()
                        + " (if right as drawn, say --accept " + one.replace("reverse", "as-drawn") + first.code()
                        + ")",
                open.length == 1 ? "it is turned round" : "they are turned round, all of them");
        if (turn) {
            turn(open);
        }
    }

    private void turn(int[] lines) {
        for (int line : lines) {
            pieces.set(line, pieces.get(line).turned());
        }
    }

    private void ask(int[] open, FallVote vote) {
        DrawnPiece first = pieces.get(open[0]);
        String grid = vote.isKnown() ? ", and the grid is not clear: of " + connected(open) + vote.words() : "";
        if (open.length == 1) {
            faults.add(FlowCheck.question(first, "stream-flow-unknown", FlowCheck.NOTHING_TELLS + grid));
            return;
        }
        if (faults.answered("reverse-all:" + first.code())) {
            note(first, named(open) + " turned round, as accepted by reverse-all:" + first.code());
            turn(open);
            return;
        }
        faults.add(Problem.error(
                "stream-flow-unknown",
                first.place().column("flow"),
                "nothing tells which way the water runs along " + open.length + " lines that hang together: "
                        + named(open) + grid,
                PieceReader.AS_DRAWN + " or " + PieceReader.AGAINST + " in column flow, or an elevation grid",
                "answer for all of them with --accept as-drawn-all:" + first.code() + " or --accept reverse-all:"
                        + first.code() + ", or for each with as-drawn: or reverse: and its code"));
    }

    /** Lines that were asked about already, or of which a person has said how they run, are not doubted again. */
    private void doubt(int[] connected) {
        int[] open = IntStream.of(connected).filter(this::isUndoubted).toArray();
        FallVote vote = vote(open);
        if (!vote.isClearlyUp()) {
            return;
        }
        DrawnPiece first = pieces.get(open[0]);
        boolean one = open.length == 1;
        String id = (one ? "reverse:" : "reverse-all:") + first.code();
        String asDrawn = id.replace("reverse", "as-drawn");
        boolean turn = !faults.answered(asDrawn)
                && faults.mayImprove(
                        id,
                        "stream-flow-uphill",
                        first.place(),
                        named(open) + (one ? " seems" : " seem") + " to run uphill: of " + connected(open)
                                + vote.words() + " (if that is right, say --accept " + asDrawn + ")",
                        one ? "it is turned round" : "all of them are turned round");
        if (turn) {
            turn(open);
        }
    }

    private boolean isUndoubted(int line) {
        String code = pieces.get(line).code();
        return !faults.hasOffered("reverse:" + code) && !faults.answered("as-drawn:" + code);
    }

    private static String connected(int[] lines) {
        return lines.length == 1 ? "1 line " : lines.length + " connected lines ";
    }

    private String named(int[] lines) {
        String first = IntStream.of(lines)
                .limit(MOST_NAMED)
                .mapToObj(line -> pieces.get(line).code())
                .collect(Collectors.joining(", "));
        return lines.length > MOST_NAMED ? first + " and " + (lines.length - MOST_NAMED) + " more" : first;
    }

    private void note(DrawnPiece first, String found) {
        faults.add(Problem.note("stream-flow", first.place(), found, "", "nothing if that is right"));
    }
}
