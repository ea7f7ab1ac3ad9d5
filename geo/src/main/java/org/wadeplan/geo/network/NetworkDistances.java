package org.wadeplan.geo.network;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * How far it is from one place to others along the streams, through as many lines as it takes.
 *
 * <p>Holds working memory for one start at a time, so that asking for many starts in a row costs no more than the streams
 * within reach of each. Not safe to share between threads.
 */
public final class NetworkDistances {

    private final StreamGraph graph;
    private final Way way;
    private final double[] nodeM;
    private final int[] reachedIn;
    private final int[] reached;
    private int reachedCount;
    /** Which start the answers belong to; none before the first. */
    private int round = 1;

    private LinePlace start = new LinePlace(0, 0);
    private int startPiece;
    private double withinM;
    private double[] heapM = new double[64];
    private int[] heapNode = new int[64];
    private int heapCount;

    /** Which ways along the streams count. */
    public enum Way {
        /** Up and down, whichever is shorter. */
        EITHER,
        /** Only with the water. */
        DOWNSTREAM,
        /** Only against the water. */
        UPSTREAM
    }

    public NetworkDistances(StreamGraph graph, Way way) {
        this.graph = graph;
        this.way = way;
        this.nodeM = new double[graph.nodeCount()];
        this.reachedIn = new int[graph.nodeCount()];
        this.reached = new int[graph.nodeCount()];
    }

    /**
     * Measures from a place to everything within a distance; answers of an earlier start are lost.
     *
     * @param withinM how far, metres; may be infinite
     */
    public void from(LinePlace place, double withinM) {
        this.start = place;
        this.startPiece = graph.pieceAt(place.line(), place.chainageM());
        this.withinM = withinM;
        this.round++;
        this.reachedCount = 0;
        this.heapCount = 0;
        if (way != Way.UPSTREAM) {
            offer(graph.toNode(startPiece), graph.toM(startPiece) - place.chainageM());
        }
        if (way != Way.DOWNSTREAM) {
            offer(graph.fromNode(startPiece), place.chainageM() - graph.fromM(startPiece));
        }
        spread();
    }

    /** Metres to a node; empty where it lies further off than was asked, or no water leads there. */
    public OptionalDouble nodeM(int node) {
        return reachedIn[node] == round ? OptionalDouble.of(nodeM[node]) : OptionalDouble.empty();
    }

    /** How many nodes lie within the distance. */
    public int reachedCount() {
        return reachedCount;
    }

    /** One of the nodes within the distance, in no stated order. */
    public int reached(int index) {
        return reached[index];
    }

    /** Metres to another place; empty where it lies further off than was asked, or no water leads there. */
    public OptionalDouble toM(LinePlace place) {
        int piece = graph.pieceAt(place.line(), place.chainageM());
        double bestM = Double.POSITIVE_INFINITY;
        if (piece == startPiece) {
            double alongM = place.chainageM() - start.chainageM();
            boolean allowed = way == Way.EITHER || (way == Way.DOWNSTREAM ? alongM >= 0 : alongM <= 0);
            bestM = allowed ? Math.abs(alongM) : bestM;
        }
        if (way != Way.UPSTREAM) {
            bestM = Math.min(bestM, over(graph.fromNode(piece), place.chainageM() - graph.fromM(piece)));
        }
        if (way != Way.DOWNSTREAM) {
            bestM = Math.min(bestM, over(graph.toNode(piece), graph.toM(piece) - place.chainageM()));
        }
        return bestM <= withinM && bestM < Double.POSITIVE_INFINITY ? OptionalDouble.of(bestM) : OptionalDouble.empty();
    }

    private double over(int node, double restM) {
        return reachedIn[node] == round ? nodeM[node] + restM : Double.POSITIVE_INFINITY;
    }

    private void spread() {
        while (heapCount > 0) {
            double atM = heapM[0];
            int node = heapNode[0];
            pop();
            if (atM > nodeM[node]) {
                continue;
            }
            if (way != Way.UPSTREAM) {
                for (int i = 0; i < graph.leavingCount(node); i++) {
                    int piece = graph.leaving(node, i);
                    offer(graph.toNode(piece), atM + graph.lengthM(piece));
                }
            }
            if (way != Way.DOWNSTREAM) {
                for (int i = 0; i < graph.arrivingCount(node); i++) {
                    int piece = graph.arriving(node, i);
                    offer(graph.fromNode(piece), atM + graph.lengthM(piece));
                }
            }
        }
    }

    private void offer(int node, double atM) {
        boolean known = reachedIn[node] == round;
        if (!(atM <= withinM) || (known && atM >= nodeM[node])) {
            return;
        }
        if (!known) {
            reachedIn[node] = round;
            reached[reachedCount++] = node;
        }
        nodeM[node] = atM;
        push(node, atM);
    }

    private void push(int node, double atM) {
        if (heapCount == heapM.length) {
            heapM = Arrays.copyOf(heapM, heapCount * 2);
            heapNode = Arrays.copyOf(heapNode, heapCount * 2);
        }
        int slot = heapCount++;
        while (slot > 0 && heapM[(slot - 1) >> 1] > atM) {
            move((slot - 1) >> 1, slot);
            slot = (slot - 1) >> 1;
        }
        heapM[slot] = atM;
        heapNode[slot] = node;
    }

    private void pop() {
        double lastM = heapM[--heapCount];
        int last = heapNode[heapCount];
        int slot = 0;
        int child = 1;
        while (child < heapCount) {
            child = child + 1 < heapCount && heapM[child + 1] < heapM[child] ? child + 1 : child;
            if (heapM[child] >= lastM) {
                break;
            }
            move(child, slot);
            slot = child;
            child = 2 * slot + 1;
        }
        heapM[slot] = lastM;
        heapNode[slot] = last;
    }

    private void move(int from, int to) {
        heapM[to] = heapM[from];
        heapNode[to] = heapNode[from];
    }
}
