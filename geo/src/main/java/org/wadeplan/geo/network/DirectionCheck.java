package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;

/**
 * Finds lines that run against their neighbours: where all lines at a node run in and none runs out, or the reverse, and
 * one of them turned round would mend it without making another such place; and arms that leave a stream and just end.
 */
final class DirectionCheck {

    /** Turning one line can uncover the next; a chain of slips longer than this is asked about in another reading. */
    private static final int MOST_PASSES = 10;

    private static final int MOST_NAMED = 6;

    private final List<DrawnPiece> pieces;
    private final StreamRules rules;
    private final SuspectedFaults faults;
    private final StreamGraph graph;
    private final Drainage drainage;
    private final int[] in;
    private final int[] out;
    private final BitSet turned = new BitSet();
    private final BitSet reported = new BitSet();

    DirectionCheck(List<DrawnPiece> pieces, StreamRules rules, SuspectedFaults faults) {
        this.pieces = new ArrayList<>(pieces);
        this.rules = rules;
        this.faults = faults;
        this.graph = StreamNoding.graph(PieceLines.of(pieces), rules.snapToleranceM());
        this.drainage = Drainage.of(graph);
        this.in = new int[graph.nodeCount()];
        this.out = new int[graph.nodeCount()];
        for (int node = 0; node < graph.nodeCount(); node++) {
            in[node] = graph.arrivingCount(node);
            out[node] = graph.leavingCount(node);
        }
        for (int line = 0; line < pieces.size(); line++) {
            reported.set(line, faults.hasOffered("reverse:" + pieces.get(line).code()));
        }
    }

    /** All pieces, those turned round that may be. */
    List<DrawnPiece> checked() {
        boolean changed = true;
        for (int pass = 0; changed && pass < MOST_PASSES; pass++) {
            changed = false;
            for (int line = 0; line < pieces.size(); line++) {
                changed |= turnedWhereAgainst(line);
            }
        }
        for (int node = 0; node < graph.nodeCount(); node++) {
            if (out[node] == 0 && in[node] > 1) {
                sink(node);
            }
        }
        return pieces;
    }

    private int upper(int line) {
        int piece = turned.get(line) ? graph.endPiece(line) - 1 : graph.firstPiece(line);
        return turned.get(line) ? graph.toNode(piece) : graph.fromNode(piece);
    }

    private int lower(int line) {
        int piece = turned.get(line) ? graph.firstPiece(line) : graph.endPiece(line) - 1;
        return turned.get(line) ? graph.fromNode(piece) : graph.toNode(piece);
    }

    private boolean turnedWhereAgainst(int line) {
        String code = pieces.get(line).code();
        if (turned.get(line) || reported.get(line) || upper(line) == lower(line)) {
            return false;
        }
        String found = against(line);
        if (found.isEmpty() || faults.answered("as-drawn:" + code)) {
            return false;
        }
        reported.set(line);
        boolean turn = faults.mayImprove(
                "reverse:" + code,
                "stream-against-neighbours",
                pieces.get(line).place(),
                found + " (if it is right as drawn, say --accept as-drawn:" + code + ")",
                "it is turned round");
        if (turn) {
            turn(line);
        }
        return turn;
    }

    /** In between, a turned line still runs in and out of every node once; only its ends change. */
    private void turn(int line) {
        int upper = upper(line);
        int lower = lower(line);
        out[upper]--;
        in[upper]++;
        in[lower]--;
        out[lower]++;
        turned.flip(line);
        pieces.set(line, pieces.get(line).turned());
    }

    /** What speaks against the line's direction; blank where nothing does. */
    private String against(int line) {
        int upper = upper(line);
        int lower = lower(line);
        boolean endsInSink = out[lower] == 0 && in[lower] > 1;
        boolean beginsInSource = in[upper] == 0 && out[upper] > 1;
        if (endsInSink && beginsInSource) {
            return "it runs against its neighbours at both ends: all lines leave " + place(upper) + " and all end at "
                    + place(lower);
        }
        if (endsInSink && out[upper] > 1 && isOnlyOne(lower, line, true)) {
            return "all lines at " + place(lower) + " end there and none leads on; of them this one alone could";
        }
        if (beginsInSource && in[lower] > 1 && isOnlyOne(upper, line, false)) {
            return "all lines at " + place(upper) + " begin there and none leads to it; of them this one alone could";
        }
        if (isDeadEnd(lower) && out[upper] > 1 && (rises(line) || (mayRise(line) && anotherLeadsOn(line)))) {
            return "it leaves " + place(upper) + " beside another line and ends at " + place(lower)
                    + " without a mouth, as a tributary drawn the wrong way does";
        }
        return "";
    }

    /** Whether one line ends at a node and nothing else is there. */
    private boolean isDeadEnd(int node) {
        return in[node] == 1 && out[node] == 0;
    }

    /** Whether no other line that ends (or begins) at the node could be turned as well without making such a node. */
    private boolean isOnlyOne(int node, int line, boolean ending) {
        if (!mayRise(line)) {
            return false;
        }
        int count = ending ? graph.arrivingCount(node) : graph.leavingCount(node);
        for (int i = 0; i < count; i++) {
            int other = graph.line(ending ? graph.arriving(node, i) : graph.leaving(node, i));
            int far = ending ? upper(other) : lower(other);
            // A line that begins here and just ends would be a spring if turned: likelier than any other.
            boolean couldTurn = ending ? out[far] > 1 : in[far] > 1 || isDeadEnd(far);
            boolean could = other != line && !turned.get(other) && couldTurn;
            if (could && mayRise(other)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the water of the node above has another way, through more than one line, to a mouth of its own. */
    private boolean anotherLeadsOn(int line) {
        int upper = upper(line);
        for (int i = 0; i < graph.leavingCount(upper); i++) {
            int other = graph.line(graph.leaving(upper, i));
            OptionalInt mouth = drainage.mouthOf(graph.leaving(upper, i));
            boolean leadsOn = other != line && !turned.get(other) && out[graph.toNode(graph.leaving(upper, i))] > 0;
            if (leadsOn && mouth.isPresent() && in[mouth.getAsInt()] + out[mouth.getAsInt()] == 1) {
                return true;
            }
        }
        return false;
    }

    /** Whether the line rises on the grid as it is drawn. */
    private boolean rises(int line) {
        return FallVote.NONE.with(pieces.get(line).line(), rules).up() == 1;
    }

    /** Whether the grid does not speak against the line's being drawn the wrong way. */
    private boolean mayRise(int line) {
        return FallVote.NONE.with(pieces.get(line).line(), rules).down() == 0;
    }

    private void sink(int node) {
        TreeSet<Integer> lines = new TreeSet<>();
        for (int i = 0; i < graph.arrivingCount(node); i++) {
            lines.add(graph.line(graph.arriving(node, i)));
        }
        for (int i = 0; i < graph.leavingCount(node); i++) {
            lines.add(graph.line(graph.leaving(node, i)));
        }
        if (lines.stream().anyMatch(reported::get)) {
            return;
        }
        for (int line : lines) {
            boolean endsHere = lower(line) == node && upper(line) != node;
            if (endsHere && faults.answered("reverse:" + pieces.get(line).code())) {
                turn(line);
                note(line, "turned round, to lead on from " + place(node) + ", where all lines ended");
                return;
            }
        }
        String codes = lines.stream()
                .limit(MOST_NAMED)
                .map(line -> pieces.get(line).code())
                .collect(Collectors.joining(", "));
        faults.add(Problem.warning(
                "stream-sink",
                pieces.get(lines.first()).place(),
                "all lines at " + place(node) + " end there and none leads on: " + codes,
                "a line that leads on, unless the water goes underground or the map ends here",
                "look at it on the map; turn the line that leads on with --accept reverse: and its code"));
    }

    private void note(int line, String found) {
        DrawnPiece piece = pieces.get(line);
        faults.add(Problem.note(
                "stream-against-neighbours-repaired",
                piece.place(),
                found + ", as accepted by reverse:" + piece.code(),
                "",
                "nothing"));
    }

    private String place(int node) {
        return String.format(
                Locale.ROOT,
                "%.0f, %.0f",
                graph.nodeAt(node).eastM(),
                graph.nodeAt(node).northM());
    }
}
