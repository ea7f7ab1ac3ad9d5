package org.wadeplan.geo.search;

import java.util.Arrays;
import java.util.PriorityQueue;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;

/** Goes out from a place along the network, up and down and through confluences, as far as a distance reaches. */
final class NetworkSpread {

    /** Hears which part of which piece was reached, with the distances at both ends. */
    @FunctionalInterface
    interface Reached {
        void part(int piece, double fromM, double toM, double fromDistM, double toDistM);
    }

    private record Arrival(int node, double distM) {}

    private final StreamGraph graph;
    private final double[] nearestM;
    private final boolean[] settled;
    private final PriorityQueue<Arrival> open = new PriorityQueue<>(
            (a, b) -> a.distM() != b.distM() ? Double.compare(a.distM(), b.distM()) : a.node() - b.node());
    private int[] touched = new int[64];
    private int touchedCount;

    /** The piece that holds the start, whose parts around it are reported already; or -1. */
    private int origin;

    private double originUpM;
    private double originDownM;

    NetworkSpread(StreamGraph graph) {
        this.graph = graph;
        this.nearestM = new double[graph.nodeCount()];
        this.settled = new boolean[graph.nodeCount()];
        Arrays.fill(nearestM, Double.POSITIVE_INFINITY);
    }

    /** From a node. */
    void fromNode(int node, double reachM, Reached reached) {
        arrive(node, 0);
        origin = -1;
        spread(reachM, reached);
    }

    /** From a place on a line. */
    void fromPlace(LinePlace place, double reachM, Reached reached) {
        int piece = graph.pieceAt(place.line(), place.chainageM());
        double atM = Math.min(graph.toM(piece), Math.max(graph.fromM(piece), place.chainageM()));
        double upM = Math.max(graph.fromM(piece), atM - reachM);
        double downM = Math.min(graph.toM(piece), atM + reachM);
        if (upM < atM) {
            reached.part(piece, upM, atM, atM - upM, 0);
        }
        if (downM > atM) {
            reached.part(piece, atM, downM, 0, downM - atM);
        }
        origin = piece;
        originUpM = atM - graph.fromM(piece);
        originDownM = graph.toM(piece) - atM;
        if (originUpM < reachM) {
            arrive(graph.fromNode(piece), originUpM);
        }
        if (originDownM < reachM) {
            arrive(graph.toNode(piece), originDownM);
        }
        spread(reachM, reached);
    }

    private void arrive(int node, double distM) {
        if (distM < nearestM[node]) {
            if (Double.isInfinite(nearestM[node])) {
                if (touchedCount == touched.length) {
                    touched = Arrays.copyOf(touched, 2 * touchedCount);
                }
                touched[touchedCount++] = node;
            }
            nearestM[node] = distM;
            open.add(new Arrival(node, distM));
        }
    }

    private void spread(double reachM, Reached reached) {
        for (Arrival next = open.poll(); next != null; next = open.poll()) {
            if (!settled[next.node()]) {
                settled[next.node()] = true;
                leave(next, reachM, reached);
            }
        }
        for (int i = 0; i < touchedCount; i++) {
            nearestM[touched[i]] = Double.POSITIVE_INFINITY;
            settled[touched[i]] = false;
        }
        touchedCount = 0;
    }

    private void leave(Arrival from, double reachM, Reached reached) {
        for (int i = 0; i < graph.arrivingCount(from.node()); i++) {
            int piece = graph.arriving(from.node(), i);
            if (!isKnown(piece, originDownM, graph.fromNode(piece), from)) {
                double lowM = Math.max(graph.fromM(piece), graph.toM(piece) - (reachM - from.distM()));
                reached.part(piece, lowM, graph.toM(piece), from.distM() + graph.toM(piece) - lowM, from.distM());
                goOn(graph.fromNode(piece), from.distM() + graph.lengthM(piece), reachM);
            }
        }
        for (int i = 0; i < graph.leavingCount(from.node()); i++) {
            int piece = graph.leaving(from.node(), i);
            if (!isKnown(piece, originUpM, graph.toNode(piece), from)) {
                double highM = Math.min(graph.toM(piece), graph.fromM(piece) + (reachM - from.distM()));
                reached.part(piece, graph.fromM(piece), highM, from.distM(), from.distM() + highM - graph.fromM(piece));
                goOn(graph.toNode(piece), from.distM() + graph.lengthM(piece), reachM);
            }
        }
    }

    /**
     * Whether every point of the piece is at least as near another way: from the start on it, or from its other end.
     *
     * @param directM from the start, where it lies on this piece, to the node now reached
     */
    private boolean isKnown(int piece, double directM, int otherEnd, Arrival now) {
        if (piece == origin && directM <= now.distM()) {
            return true;
        }
        return otherEnd != now.node() && settled[otherEnd] && nearestM[otherEnd] + graph.lengthM(piece) <= now.distM();
    }

    private void goOn(int node, double distM, double reachM) {
        if (distM < reachM) {
            arrive(node, distM);
        }
    }
}
