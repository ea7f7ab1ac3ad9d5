package org.wadeplan.geo.network;

import java.util.Arrays;
import org.wadeplan.geo.lines.LineSet;

/**
 * The places along each line that are nodes, while noding is under way: those at its own vertices, which never change, and
 * those where loose ends were joined to its middle. Places that were found to be one are held together.
 */
final class LineStops {

    private static final int NONE = -1;

    private final SharedVertices shared;
    private final int[] start;
    private final int[] exactPlace;
    private final double[] exactAtM;
    private final int[] sameAs;
    private final int[] latestJoined;
    private int[] previousJoined = new int[64];
    private int[] joinedPlace = new int[64];
    private double[] joinedAtM = new double[64];
    private int joinedCount;

    LineStops(LineSet lines, SharedVertices shared) {
        this.shared = shared;
        this.start = new int[lines.lineCount() + 1];
        int members = shared.memberEnd(shared.placeCount() - 1);
        for (int member = 0; member < members; member++) {
            start[shared.line(member) + 1]++;
        }
        for (int line = 0; line < lines.lineCount(); line++) {
            start[line + 1] += start[line];
        }
        this.exactPlace = new int[members];
        this.exactAtM = new double[members];
        int[] vertexOf = new int[members];
        int[] next = Arrays.copyOf(start, start.length);
        for (int place = 0; place < shared.placeCount(); place++) {
            for (int member = shared.memberStart(place); member < shared.memberEnd(place); member++) {
                int slot = next[shared.line(member)]++;
                exactPlace[slot] = place;
                vertexOf[slot] = shared.vertex(member);
            }
        }
        sortAlong(lines, vertexOf);
        this.sameAs = new int[shared.placeCount()];
        Arrays.setAll(sameAs, place -> place);
        this.latestJoined = new int[lines.lineCount()];
        Arrays.fill(latestJoined, NONE);
    }

    /** Vertex number and place of each stop as one number, so that sorting by vertex carries the place along. */
    private void sortAlong(LineSet lines, int[] vertexOf) {
        long[] both = new long[vertexOf.length];
        for (int slot = 0; slot < both.length; slot++) {
            both[slot] = ((long) vertexOf[slot] << 32) | exactPlace[slot];
        }
        for (int line = 0; line < lines.lineCount(); line++) {
            Arrays.sort(both, start[line], start[line + 1]);
        }
        for (int slot = 0; slot < both.length; slot++) {
            exactPlace[slot] = (int) both[slot];
            exactAtM[slot] = lines.chainageM((int) (both[slot] >>> 32));
        }
    }

    SharedVertices shared() {
        return shared;
    }

    /** Number of the line's first stop at a vertex; they follow each other along it, both ends among them. */
    int first(int line) {
        return start[line];
    }

    int end(int line) {
        return start[line + 1];
    }

    int place(int stop) {
        return exactPlace[stop];
    }

    double atM(int stop) {
        return exactAtM[stop];
    }

    /** Number of the line's latest stop away from vertices, or a number below 0. */
    int latestJoined(int line) {
        return latestJoined[line];
    }

    int previousJoined(int joined) {
        return previousJoined[joined];
    }

    int joinedPlace(int joined) {
        return joinedPlace[joined];
    }

    double joinedAtM(int joined) {
        return joinedAtM[joined];
    }

    void addJoined(int line, double atM, int place) {
        if (joinedCount == joinedPlace.length) {
            int larger = joinedCount + joinedCount / 2;
            previousJoined = Arrays.copyOf(previousJoined, larger);
            joinedPlace = Arrays.copyOf(joinedPlace, larger);
            joinedAtM = Arrays.copyOf(joinedAtM, larger);
        }
        previousJoined[joinedCount] = latestJoined[line];
        joinedPlace[joinedCount] = place;
        joinedAtM[joinedCount] = atM;
        latestJoined[line] = joinedCount++;
    }

    /** The one that stands for all places that were found to be the same. */
    int node(int place) {
        int root = place;
        while (sameAs[root] != root) {
            root = sameAs[root];
        }
        int step = place;
        while (sameAs[step] != root) {
            int next = sameAs[step];
            sameAs[step] = root;
            step = next;
        }
        return root;
    }

    /** Makes two places one node. The place where more vertices stand gives the node its position. */
    void unite(int one, int other) {
        int a = node(one);
        int b = node(other);
        if (a == b) {
            return;
        }
        if (leads(a, b)) {
            sameAs[b] = a;
        } else {
            sameAs[a] = b;
        }
    }

    private boolean leads(int a, int b) {
        int sizeA = shared.memberEnd(a) - shared.memberStart(a);
        int sizeB = shared.memberEnd(b) - shared.memberStart(b);
        if (sizeA != sizeB) {
            return sizeA > sizeB;
        }
        return shared.eastM(a) != shared.eastM(b)
                ? shared.eastM(a) < shared.eastM(b)
                : shared.northM(a) <= shared.northM(b);
    }
}
