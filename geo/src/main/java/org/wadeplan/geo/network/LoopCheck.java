package org.wadeplan.geo.network;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;

/** Reports where water would run in a circle, where channels part and meet again, and lines that meet no other. */
final class LoopCheck {

    private static final int MOST_NAMED = 6;

    private final StreamGraph graph;
    private final List<DrawnPiece> pieces;
    private final SuspectedFaults faults;

    /** For a graph whose line numbers are positions among the pieces. */
    LoopCheck(StreamGraph graph, List<DrawnPiece> pieces, SuspectedFaults faults) {
        this.graph = graph;
        this.pieces = pieces;
        this.faults = faults;
    }

    void check() {
        circles();
        List<int[]> groups = ConnectedLines.of(graph);
        long alone = groups.stream().filter(group -> group.length == 1).count();
        for (int[] group : groups) {
            braids(group);
            // Where most lines stand alone, that is how these streams are mapped.
            if (group.length == 1 && 2 * alone < graph.lines().lineCount()) {
                isolated(group[0]);
            }
        }
    }

    private void isolated(int line) {
        faults.add(Problem.note(
                "stream-isolated",
                pieces.get(line).place(),
                String.format(
                        Locale.ROOT,
                        "the line meets no other: it begins near %.0f, %.0f and is %.0f m long",
                        graph.lines().at(line, 0).eastM(),
                        graph.lines().at(line, 0).northM(),
                        graph.lines().lengthM(line)),
                "",
                "nothing if it is a stream of its own; if not, draw the missing part"));
    }

    /** Pieces that are on no way in from a source and on no way out to a mouth run in circles. */
    private void circles() {
        BitSet circling = new BitSet();
        circling.set(0, graph.pieceCount());
        for (int piece : graph.topology().downstream()) {
            circling.clear(piece);
        }
        for (int piece : graph.topology().turned().downstream()) {
            circling.clear(piece);
        }
        for (int start = circling.nextSetBit(0); start >= 0; start = circling.nextSetBit(start + 1)) {
            circle(start, taken(start, circling));
        }
    }

    /** Takes out of the set all pieces that hang together with one, and gives their lines. */
    private SortedSet<Integer> taken(int start, BitSet circling) {
        TreeSet<Integer> lines = new TreeSet<>();
        ArrayDeque<Integer> open = new ArrayDeque<>();
        circling.clear(start);
        open.add(start);
        while (!open.isEmpty()) {
            int piece = open.remove();
            lines.add(graph.line(piece));
            int node = graph.toNode(piece);
            for (int i = 0; i < graph.leavingCount(node); i++) {
                int next = graph.leaving(node, i);
                if (circling.get(next)) {
                    circling.clear(next);
                    open.add(next);
                }
            }
        }
        return lines;
    }

    private void circle(int piece, SortedSet<Integer> lines) {
        String codes = lines.stream()
                .limit(MOST_NAMED)
                .map(line -> pieces.get(line).code())
                .collect(Collectors.joining(", "));
        String more = lines.size() > MOST_NAMED ? " and " + (lines.size() - MOST_NAMED) + " more" : "";
        faults.add(Problem.warning(
                "stream-circle",
                pieces.get(lines.first()).place(),
                String.format(
                        Locale.ROOT,
                        "the water would run in a circle through %.0f, %.0f: %s%s",
                        graph.nodeAt(graph.fromNode(piece)).eastM(),
                        graph.nodeAt(graph.fromNode(piece)).northM(),
                        codes,
                        more),
                "streams that lead to a mouth: there is no order on a circle nor below it",
                "look at it on the map; turn the line that is drawn the wrong way, or leave out the ring"));
    }

    private void braids(int[] group) {
        int count = 0;
        BitSet nodes = new BitSet();
        for (int line : group) {
            for (int piece = graph.firstPiece(line); piece < graph.endPiece(line); piece++) {
                count++;
                nodes.set(graph.fromNode(piece));
                nodes.set(graph.toNode(piece));
            }
        }
        int rings = count - nodes.cardinality() + 1;
        if (rings <= 0) {
            return;
        }
        String where = nodes.stream()
                .filter(node -> graph.leavingCount(node) > 1)
                .mapToObj(node -> String.format(
                        Locale.ROOT,
                        ", for the first time near %.0f, %.0f",
                        graph.nodeAt(node).eastM(),
                        graph.nodeAt(node).northM()))
                .findFirst()
                .orElse("");
        faults.add(Problem.note(
                "stream-braided",
                pieces.get(group[0]).place(),
                "among " + group.length + (group.length == 1 ? " connected line" : " connected lines")
                        + " the water parts and meets again " + (rings == 1 ? "once" : rings + " times") + where,
                "",
                "nothing; Shreve's order is not told below the first parting"));
    }
}
