package org.wadeplan.geo.network;

import java.util.Arrays;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;

/** Writes down the graph once all stops along all lines are known. */
final class GraphPieces {

    private static final int NONE = -1;

    private final LineSet lines;
    private final SharedVertices shared;
    private final LineStops stops;
    private final double toleranceM;
    private final int[] number;
    private final int[] nodePlace;
    private int nodeCount;
    private double[] fromM;
    private double[] toM;
    private int[] fromNode;
    private int[] toNode;
    private int pieces;
    private double[] atM = new double[16];
    private int[] at = new int[16];
    private boolean[] exact = new boolean[16];

    GraphPieces(LineSet lines, SharedVertices shared, LineStops stops, double toleranceM) {
        this.lines = lines;
        this.shared = shared;
        this.stops = stops;
        this.toleranceM = toleranceM;
        this.number = new int[shared.placeCount()];
        Arrays.fill(number, NONE);
        this.nodePlace = new int[shared.placeCount()];
        int expected = lines.lineCount() + 16;
        this.fromM = new double[expected];
        this.toM = new double[expected];
        this.fromNode = new int[expected];
        this.toNode = new int[expected];
    }

    StreamGraph build() {
        int[] firstPiece = new int[lines.lineCount() + 1];
        for (int line = 0; line < lines.lineCount(); line++) {
            int count = single(line, gather(line));
            for (int i = 1; i < count; i++) {
                add(atM[i - 1], atM[i], node(at[i - 1]), node(at[i]));
            }
            firstPiece[line + 1] = pieces;
        }
        MetricPoint[] nodes = new MetricPoint[nodeCount];
        for (int node = 0; node < nodeCount; node++) {
            nodes[node] = new MetricPoint(shared.eastM(nodePlace[node]), shared.northM(nodePlace[node]));
        }
        return new StreamGraph(
                lines,
                nodes,
                firstPiece,
                Arrays.copyOf(fromM, pieces),
                Arrays.copyOf(toM, pieces),
                Arrays.copyOf(fromNode, pieces),
                Arrays.copyOf(toNode, pieces));
    }

    /** All stops of a line by chainage, those at vertices first where chainages are equal. */
    private int gather(int line) {
        int count = 0;
        for (int stop = stops.first(line); stop < stops.end(line); stop++) {
            count = put(count, stops.atM(stop), stops.place(stop), true);
        }
        for (int joined = stops.latestJoined(line); joined >= 0; joined = stops.previousJoined(joined)) {
            count = put(count, stops.joinedAtM(joined), stops.joinedPlace(joined), false);
        }
        return count;
    }

    /** Inserts from behind: stops at vertices come in order, and the others are few. */
    private int put(int count, double chainageM, int place, boolean isExact) {
        if (count == at.length) {
            atM = Arrays.copyOf(atM, count * 2);
            at = Arrays.copyOf(at, count * 2);
            exact = Arrays.copyOf(exact, count * 2);
        }
        int slot = count;
        while (slot > 0 && atM[slot - 1] > chainageM) {
            atM[slot] = atM[slot - 1];
            at[slot] = at[slot - 1];
            exact[slot] = exact[slot - 1];
            slot--;
        }
        atM[slot] = chainageM;
        at[slot] = place;
        exact[slot] = isExact;
        return count + 1;
    }

    /** Leaves out a stop that is the same node as the one before it and no further than the tolerance: never an end. */
    private int single(int line, int count) {
        int kept = 1;
        for (int i = 1; i < count; i++) {
            boolean isEnd = i == count - 1;
            boolean same = stops.node(at[i]) == stops.node(at[kept - 1]) && atM[i] - atM[kept - 1] <= toleranceM;
            if (same && (exact[i] || isEnd) && kept > 1) {
                kept--;
            } else if (same && !(isEnd && kept == 1)) {
                continue;
            }
            atM[kept] = atM[i];
            at[kept] = at[i];
            exact[kept++] = exact[i];
        }
        if (atM[kept - 1] != lines.lengthM(line)) {
            throw new IllegalStateException("Line " + lines.id(line) + " lost its lower end");
        }
        return kept;
    }

    private void add(double upperM, double lowerM, int upper, int lower) {
        if (pieces == fromM.length) {
            int larger = pieces + pieces / 2;
            fromM = Arrays.copyOf(fromM, larger);
            toM = Arrays.copyOf(toM, larger);
            fromNode = Arrays.copyOf(fromNode, larger);
            toNode = Arrays.copyOf(toNode, larger);
        }
        fromM[pieces] = upperM;
        toM[pieces] = lowerM;
        fromNode[pieces] = upper;
        toNode[pieces++] = lower;
    }

    private int node(int place) {
        int root = stops.node(place);
        if (number[root] == NONE) {
            nodePlace[nodeCount] = root;
            number[root] = nodeCount++;
        }
        return number[root];
    }
}
