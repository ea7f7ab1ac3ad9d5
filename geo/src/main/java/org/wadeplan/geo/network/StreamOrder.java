package org.wadeplan.geo.network;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Strahler's and Shreve's stream order of a network of directed pieces.
 *
 * <p>Strahler: a piece that nothing flows into has order 1; where two or more inflows share the highest order, the piece
 * below has one more; otherwise it has the highest. Source: Strahler 1957, Trans. Am. Geophys. Union 38(6). A minor arm of
 * a split channel takes the highest order above it and never raises the order below: the practice of the United States
 * national flowline data.
 *
 * <p>Shreve: the number of sources above. Source: Shreve 1966, J. Geol. 74. It is defined for trees alone, so a piece below
 * a place where the water parts has none. Pieces on a loop, or below one, have neither.
 */
public final class StreamOrder {

    private static final int NONE = 0;

    private final int[] strahler;
    private final int[] shreve;

    private StreamOrder(int pieces) {
        this.strahler = new int[pieces];
        this.shreve = new int[pieces];
    }

    /** The orders of a graph in which no arm is known to be the lesser one. */
    public static StreamOrder of(StreamGraph graph) {
        return of(graph, new BitSet());
    }

    /**
     * The orders of a graph.
     *
     * @param minorArms numbers of the pieces that are the lesser arm of a split channel
     */
    public static StreamOrder of(StreamGraph graph, BitSet minorArms) {
        return of(graph.topology(), minorArms);
    }

    static StreamOrder of(FlowTopology topology, BitSet minorArms) {
        StreamOrder order = new StreamOrder(topology.pieceCount());
        int[] counts = new int[topology.pieceCount()];
        for (int piece : topology.downstream()) {
            order.setStrahler(topology, piece, minorArms.get(piece), counts);
            order.setShreve(topology, piece);
        }
        return order;
    }

    /** Strahler's order, 1 or more; empty on a loop and below one. */
    public OptionalInt strahler(int piece) {
        return strahler[piece] == NONE ? OptionalInt.empty() : OptionalInt.of(strahler[piece]);
    }

    /** Shreve's magnitude, 1 or more; empty below a split, on a loop and below one. */
    public OptionalInt shreve(int piece) {
        return shreve[piece] == NONE ? OptionalInt.empty() : OptionalInt.of(shreve[piece]);
    }

    /** What a piece counts for below stands in {@code counts}: 0 for a minor arm. */
    private void setStrahler(FlowTopology topology, int piece, boolean minorArm, int[] counts) {
        int node = topology.fromNode(piece);
        int highest = 0;
        int highestCounting = 0;
        int sharing = 0;
        for (int i = 0; i < topology.arrivingCount(node); i++) {
            int inflow = topology.arriving(node, i);
            highest = Math.max(highest, strahler[inflow]);
            if (counts[inflow] > highestCounting) {
                highestCounting = counts[inflow];
                sharing = 1;
            } else if (counts[inflow] == highestCounting) {
                sharing++;
            }
        }
        if (topology.arrivingCount(node) == 0) {
            strahler[piece] = 1;
            counts[piece] = minorArm ? 0 : 1;
        } else if (minorArm || highestCounting == 0) {
            strahler[piece] = highest;
        } else {
            strahler[piece] = sharing > 1 ? highestCounting + 1 : highestCounting;
            counts[piece] = strahler[piece];
        }
    }

    private void setShreve(FlowTopology topology, int piece) {
        int node = topology.fromNode(piece);
        int inflows = topology.arrivingCount(node);
        if (inflows == 0) {
            shreve[piece] = 1;
            return;
        }
        if (topology.leavingCount(node) > 1) {
            return;
        }
        int sources = 0;
        for (int i = 0; i < inflows; i++) {
            int above = shreve[topology.arriving(node, i)];
            if (above == NONE) {
                return;
            }
            sources += above;
        }
        shreve[piece] = sources;
    }

    /**
     * A piece of stream between two nodes, where nodes have names.
     *
     * @param id unique
     * @param from node at its upper end
     * @param to node at its lower end
     * @param minorArm whether it is the lesser arm of a split channel
     */
    public record Piece(String id, String from, String to, boolean minorArm) {}

    /**
     * Strahler's order of every piece by its id.
     *
     * @return without the pieces that lie on a loop or below one, since they have no order
     */
    public static Map<String, Integer> strahler(List<Piece> pieces) {
        Map<String, Integer> nodes = new HashMap<>();
        int[] from = new int[pieces.size()];
        int[] to = new int[pieces.size()];
        BitSet minorArms = new BitSet();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            from[i] = number(nodes, piece.from());
            to[i] = number(nodes, piece.to());
            minorArms.set(i, piece.minorArm());
        }
        StreamOrder order = of(new FlowTopology(nodes.size(), from, to), minorArms);
        Map<String, Integer> orders = new TreeMap<>();
        for (int i = 0; i < pieces.size(); i++) {
            String id = pieces.get(i).id();
            order.strahler(i).ifPresent(known -> orders.put(id, known));
        }
        return orders;
    }

    private static int number(Map<String, Integer> nodes, String name) {
        return nodes.computeIfAbsent(name, unseen -> nodes.size());
    }
}
