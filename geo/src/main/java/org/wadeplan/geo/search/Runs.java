package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;

/**
 * The stretches of stream between confluences, each one piece or several that follow each other, measured in metres from
 * the upper end.
 */
final class Runs {

    private final StreamGraph graph;
    private final int[] rankOfLine;
    private final int[] runOfPiece;
    private final double[] offsetM;
    private final int[] first;
    private final int[] pieces;
    private final double[] lengthM;

    Runs(StreamGraph graph, boolean acrossLines) {
        this.graph = graph;
        int count = graph.pieceCount();
        this.rankOfLine = ranks(graph.lines());
        this.runOfPiece = new int[count];
        this.offsetM = new double[count];
        this.pieces = new int[count];
        Arrays.fill(runOfPiece, -1);
        int[] next = new int[count];
        boolean[] follows = new boolean[count];
        for (int piece = 0; piece < count; piece++) {
            next[piece] = next(piece, acrossLines);
            if (next[piece] >= 0) {
                follows[next[piece]] = true;
            }
        }
        List<Integer> starts = new ArrayList<>();
        int filled = 0;
        int[] ordered = piecesByRank();
        for (boolean rings : new boolean[] {false, true}) {
            for (int head : ordered) {
                if (runOfPiece[head] < 0 && (rings || !follows[head])) {
                    starts.add(filled);
                    filled = chain(head, next, starts.size() - 1, filled);
                }
            }
        }
        starts.add(filled);
        this.first = starts.stream().mapToInt(each -> each).toArray();
        this.lengthM = new double[first.length - 1];
        for (int run = 0; run < lengthM.length; run++) {
            int last = pieces[first[run + 1] - 1];
            lengthM[run] = offsetM[last] + graph.lengthM(last);
        }
    }

    /** By id, then by where it starts, so that nothing depends on the order of lines in the file. */
    private static int[] ranks(LineSet lines) {
        Comparator<Integer> order = Comparator.comparing((Integer line) -> lines.id(line))
                .thenComparing(line -> lines.eastM(lines.firstVertex(line)))
                .thenComparing(line -> lines.northM(lines.firstVertex(line)))
                .thenComparing(lines::lengthM);
        int[] sorted = IntStream.range(0, lines.lineCount())
                .boxed()
                .sorted(order)
                .mapToInt(each -> each)
                .toArray();
        int[] ranks = new int[sorted.length];
        for (int rank = 0; rank < sorted.length; rank++) {
            ranks[sorted[rank]] = rank;
        }
        return ranks;
    }

    private int[] piecesByRank() {
        return IntStream.range(0, graph.pieceCount())
                .boxed()
                .sorted(Comparator.comparing((Integer piece) -> rankOfLine[graph.line(piece)])
                        .thenComparing(piece -> piece))
                .mapToInt(each -> each)
                .toArray();
    }

    /** The one piece that goes on below; -1 where none or several do, or where another joins. */
    private int next(int piece, boolean acrossLines) {
        int node = graph.toNode(piece);
        if (graph.arrivingCount(node) != 1 || graph.leavingCount(node) != 1) {
            return -1;
        }
        int below = graph.leaving(node, 0);
        return below != piece && (acrossLines || graph.line(below) == graph.line(piece)) ? below : -1;
    }

    private int chain(int head, int[] next, int run, int filledBefore) {
        int filled = filledBefore;
        double atM = 0;
        for (int piece = head; piece >= 0 && runOfPiece[piece] < 0; piece = next[piece]) {
            runOfPiece[piece] = run;
            offsetM[piece] = atM;
            pieces[filled++] = piece;
            atM += graph.lengthM(piece);
        }
        return filled;
    }

    StreamGraph graph() {
        return graph;
    }

    int count() {
        return lengthM.length;
    }

    double lengthM(int run) {
        return lengthM[run];
    }

    int runOf(int piece) {
        return runOfPiece[piece];
    }

    /** Place of a line in an order that does not depend on the file's. */
    int rank(int line) {
        return rankOfLine[line];
    }

    int pieceCount(int run) {
        return first[run + 1] - first[run];
    }

    /** From the uppermost, 0, to the lowest. */
    int piece(int run, int index) {
        return pieces[first[run] + index];
    }

    int lowestPiece(int run) {
        return pieces[first[run + 1] - 1];
    }

    int upperNode(int run) {
        return graph.fromNode(pieces[first[run]]);
    }

    int lowerNode(int run) {
        return graph.toNode(lowestPiece(run));
    }

    /** Metres from the run's upper end to a chainage on one of its pieces. */
    double measureM(int piece, double chainageM) {
        return offsetM[piece] + chainageM - graph.fromM(piece);
    }

    /** The run's lowest piece that holds a measure, so that a start at a node lies on the piece above it. */
    private int pieceAt(int run, double atM) {
        int index = first[run];
        while (index < first[run + 1] - 1 && offsetM[pieces[index]] + graph.lengthM(pieces[index]) < atM) {
            index++;
        }
        return pieces[index];
    }

    LinePlace place(int run, double atM) {
        int piece = pieceAt(run, atM);
        double chainageM = graph.fromM(piece) + atM - offsetM[piece];
        return new LinePlace(graph.line(piece), Math.min(graph.toM(piece), Math.max(graph.fromM(piece), chainageM)));
    }

    /** Between two measures of a run, line by line, from the lower end upwards. */
    List<LineStretch> stretches(int run, double fromM, double toM) {
        List<LineStretch> found = new ArrayList<>();
        for (int index = first[run + 1] - 1; index >= first[run]; index--) {
            int piece = pieces[index];
            double low = Math.max(fromM, offsetM[piece]);
            double high = Math.min(toM, offsetM[piece] + graph.lengthM(piece));
            if (high > low) {
                double shiftM = graph.fromM(piece) - offsetM[piece];
                found.add(new LineStretch(
                        graph.line(piece),
                        Math.max(graph.fromM(piece), low + shiftM),
                        Math.min(graph.toM(piece), high + shiftM)));
            }
        }
        return found;
    }
}
