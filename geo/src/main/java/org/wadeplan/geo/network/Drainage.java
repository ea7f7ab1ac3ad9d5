package org.wadeplan.geo.network;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Where the water of each piece goes and how much stream lies above it.
 *
 * <p>Where a channel parts, the way to the mouth follows the main arm: not a minor one if another is there; then the one
 * that goes on along a line that arrives; then the one with the smallest number. Immutable.
 */
public final class Drainage {

    private static final int NONE = -1;

    private final StreamGraph graph;
    private final int[] below;
    private final int[] mouth;
    private final double[] toMouthM;
    private final double[] routedM;
    private final BitSet parted = new BitSet();

    private Drainage(StreamGraph graph) {
        this.graph = graph;
        this.below = new int[graph.nodeCount()];
        this.mouth = new int[graph.nodeCount()];
        this.toMouthM = new double[graph.nodeCount()];
        this.routedM = new double[graph.pieceCount()];
    }

    /** The drainage of a graph in which no arm is known to be the lesser one. */
    public static Drainage of(StreamGraph graph) {
        return of(graph, new BitSet());
    }

    /**
     * The drainage of a graph.
     *
     * @param minorArms numbers of the pieces that are the lesser arm of a split channel
     */
    public static Drainage of(StreamGraph graph, BitSet minorArms) {
        Drainage drainage = new Drainage(graph);
        for (int node = 0; node < graph.nodeCount(); node++) {
            drainage.below[node] = drainage.mainArm(node, minorArms);
        }
        drainage.findMouths();
        drainage.addUpLengths();
        return drainage;
    }

    private int mainArm(int node, BitSet minorArms) {
        int best = NONE;
        for (int i = 0; i < graph.leavingCount(node); i++) {
            int arm = graph.leaving(node, i);
            if (best == NONE || rank(node, arm, minorArms) < rank(node, best, minorArms)) {
                best = arm;
            }
        }
        return best;
    }

    private int rank(int node, int arm, BitSet minorArms) {
        boolean goesOn = false;
        for (int i = 0; i < graph.arrivingCount(node); i++) {
            goesOn |= graph.line(graph.arriving(node, i)) == graph.line(arm);
        }
        return (minorArms.get(arm) ? 2 : 0) + (goesOn ? 0 : 1);
    }

    /** Follows the water down from each node to one whose mouth is known, then writes it down on the way back up. */
    private void findMouths() {
        int unknown = -2;
        int underWay = -3;
        Arrays.fill(mouth, unknown);
        int[] way = new int[graph.nodeCount()];
        for (int start = 0; start < graph.nodeCount(); start++) {
            int steps = 0;
            int node = start;
            while (mouth[node] == unknown && below[node] != NONE) {
                mouth[node] = underWay;
                way[steps++] = node;
                node = graph.toNode(below[node]);
            }
            if (mouth[node] == unknown) {
                mouth[node] = node;
            }
            int found = mouth[node] == underWay ? NONE : mouth[node];
            while (steps > 0) {
                int upper = way[--steps];
                mouth[upper] = found;
                toMouthM[upper] = graph.lengthM(below[upper]) + toMouthM[graph.toNode(below[upper])];
            }
        }
    }

    /** Hands each node's length to its main arm alone, and marks what lies below a place where the water parts. */
    private void addUpLengths() {
        Arrays.fill(routedM, Double.NaN);
        for (int piece : graph.topology().downstream()) {
            int node = graph.fromNode(piece);
            boolean isParted = graph.arrivingCount(node) > 0 && graph.leavingCount(node) > 1;
            double sumM = graph.lengthM(piece);
            for (int i = 0; i < graph.arrivingCount(node); i++) {
                int inflow = graph.arriving(node, i);
                isParted |= parted.get(inflow);
                sumM += piece == below[node] ? routedM[inflow] : 0;
            }
            parted.set(piece, isParted);
            routedM[piece] = sumM;
        }
    }

    /** The node where the water of a node leaves the network; empty where it runs into a loop. */
    public OptionalInt mouthNode(int node) {
        return mouth[node] == NONE ? OptionalInt.empty() : OptionalInt.of(mouth[node]);
    }

    /** The node where the water of a piece leaves the network: pieces with the same one are of one catchment. */
    public OptionalInt mouthOf(int piece) {
        return mouthNode(graph.toNode(piece));
    }

    /** Metres down the main arms from a place on a line to where its water leaves the network; empty above a loop. */
    public OptionalDouble toMouthM(LinePlace place) {
        int piece = graph.pieceAt(place.line(), place.chainageM());
        int node = graph.toNode(piece);
        return mouth[node] == NONE
                ? OptionalDouble.empty()
                : OptionalDouble.of(graph.toM(piece) - place.chainageM() + toMouthM[node]);
    }

    /** The pieces from one to the mouth along the main arms, the given one first; on a loop, once round. */
    public int[] pathToMouth(int piece) {
        BitSet seen = new BitSet();
        int[] path = new int[16];
        int count = 0;
        int next = piece;
        while (next != NONE && !seen.get(next)) {
            seen.set(next);
            if (count == path.length) {
                path = Arrays.copyOf(path, count * 2);
            }
            path[count++] = next;
            next = below[graph.toNode(next)];
        }
        return Arrays.copyOf(path, count);
    }

    /**
     * Metres of stream above a piece's lower end, the piece itself included, each stretch counted once however often its
     * water parts and meets.
     */
    public double upstreamLengthM(int piece) {
        if (!Double.isNaN(routedM[piece]) && !parted.get(piece)) {
            return routedM[piece];
        }
        double sumM = 0;
        BitSet seen = new BitSet();
        ArrayDeque<Integer> open = new ArrayDeque<>();
        seen.set(piece);
        open.add(piece);
        while (!open.isEmpty()) {
            int next = open.remove();
            sumM += graph.lengthM(next);
            int node = graph.fromNode(next);
            for (int i = 0; i < graph.arrivingCount(node); i++) {
                int above = graph.arriving(node, i);
                if (!seen.get(above)) {
                    seen.set(above);
                    open.add(above);
                }
            }
        }
        return sumM;
    }

    /**
     * The same, but where a channel parts all that lies above goes to the main arm, and the others begin with their own
     * length: so the lengths at all mouths add up to the network's. Empty on a loop and below one.
     */
    public OptionalDouble routedUpstreamLengthM(int piece) {
        return Double.isNaN(routedM[piece]) ? OptionalDouble.empty() : OptionalDouble.of(routedM[piece]);
    }
}
