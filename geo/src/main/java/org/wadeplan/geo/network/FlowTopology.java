package org.wadeplan.geo.network;

import java.util.Arrays;

/** Which pieces flow into and out of which nodes: a directed graph without shapes. Immutable. */
final class FlowTopology {

    private final int[] fromNode;
    private final int[] toNode;
    private final int[] arrivingStart;
    private final int[] arriving;
    private final int[] leavingStart;
    private final int[] leaving;

    /** The arrays are taken over, not copied. */
    FlowTopology(int nodeCount, int[] fromNode, int[] toNode) {
        this.fromNode = fromNode;
        this.toNode = toNode;
        this.arrivingStart = starts(toNode, nodeCount);
        this.arriving = grouped(toNode, arrivingStart);
        this.leavingStart = starts(fromNode, nodeCount);
        this.leaving = grouped(fromNode, leavingStart);
    }

    /** The same with every piece running the other way. */
    FlowTopology turned() {
        return new FlowTopology(nodeCount(), /* fromNode= */ toNode, /* toNode= */ fromNode);
    }

    int nodeCount() {
        return arrivingStart.length - 1;
    }

    int pieceCount() {
        return fromNode.length;
    }

    int fromNode(int piece) {
        return fromNode[piece];
    }

    int toNode(int piece) {
        return toNode[piece];
    }

    int arrivingCount(int node) {
        return arrivingStart[node + 1] - arrivingStart[node];
    }

    int arriving(int node, int index) {
        return arriving[arrivingStart[node] + index];
    }

    int leavingCount(int node) {
        return leavingStart[node + 1] - leavingStart[node];
    }

    int leaving(int node, int index) {
        return leaving[leavingStart[node] + index];
    }

    /**
     * The pieces, each after all that flow into it.
     *
     * @return without those that lie on a loop or below one, since they come after themselves
     */
    int[] downstream() {
        int[] waitingFor = new int[pieceCount()];
        int[] sorted = new int[pieceCount()];
        int count = 0;
        for (int piece = 0; piece < waitingFor.length; piece++) {
            waitingFor[piece] = arrivingCount(fromNode[piece]);
            if (waitingFor[piece] == 0) {
                sorted[count++] = piece;
            }
        }
        for (int done = 0; done < count; done++) {
            int node = toNode[sorted[done]];
            for (int i = leavingStart[node]; i < leavingStart[node + 1]; i++) {
                if (--waitingFor[leaving[i]] == 0) {
                    sorted[count++] = leaving[i];
                }
            }
        }
        return Arrays.copyOf(sorted, count);
    }

    private static int[] starts(int[] nodeOfPiece, int nodeCount) {
        int[] starts = new int[nodeCount + 1];
        for (int node : nodeOfPiece) {
            starts[node + 1]++;
        }
        for (int node = 0; node < nodeCount; node++) {
            starts[node + 1] += starts[node];
        }
        return starts;
    }

    private static int[] grouped(int[] nodeOfPiece, int[] starts) {
        int[] next = Arrays.copyOf(starts, starts.length);
        int[] grouped = new int[nodeOfPiece.length];
        for (int piece = 0; piece < nodeOfPiece.length; piece++) {
            grouped[next[nodeOfPiece[piece]]++] = piece;
        }
        return grouped;
    }
}
