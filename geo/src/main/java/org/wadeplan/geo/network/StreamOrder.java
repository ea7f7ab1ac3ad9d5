package org.wadeplan.geo.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Strahler's stream order of a network of directed pieces.
 *
 * <p>A piece that nothing flows into has order 1; where two or more inflows share the highest order, the piece below has
 * one more; otherwise it has the highest. Source: Strahler 1957, Trans. Am. Geophys. Union 38(6). A minor arm of a split
 * channel takes the highest order above it and never raises the order below: the practice of the United States national
 * flowline data.
 */
public final class StreamOrder {

    private StreamOrder() {}

    /**
     * A piece of stream between two nodes.
     *
     * @param id unique
     * @param from node at its upper end
     * @param to node at its lower end
     * @param minorArm whether it is the lesser arm of a split channel
     */
    public record Piece(String id, String from, String to, boolean minorArm) {}

    /** The order, and what it counts for below: 0 for a minor arm. */
    private record Result(int order, int counts) {}

    /**
     * The order of every piece by its id.
     *
     * @return without the pieces that lie on a loop or below one, since they have no order
     */
    public static Map<String, Integer> strahler(List<Piece> pieces) {
        Map<String, List<Piece>> leaving = new HashMap<>();
        Map<String, List<Piece>> arriving = new HashMap<>();
        for (Piece piece : pieces) {
            leaving.computeIfAbsent(piece.from(), node -> new ArrayList<>()).add(piece);
            arriving.computeIfAbsent(piece.to(), node -> new ArrayList<>()).add(piece);
        }
        Map<String, Result> results = new HashMap<>();
        Map<String, Integer> waitingFor = new HashMap<>();
        Deque<Piece> ready = new ArrayDeque<>();
        for (Piece piece : pieces) {
            int above = arriving.getOrDefault(piece.from(), List.of()).size();
            waitingFor.put(piece.id(), above);
            if (above == 0) {
                ready.add(piece);
            }
        }
        while (!ready.isEmpty()) {
            Piece piece = ready.remove();
            results.put(piece.id(), result(piece, arriving.getOrDefault(piece.from(), List.of()), results));
            for (Piece below : leaving.getOrDefault(piece.to(), List.of())) {
                if (waitingFor.merge(below.id(), -1, Integer::sum) == 0) {
                    ready.add(below);
                }
            }
        }
        Map<String, Integer> orders = new TreeMap<>();
        results.forEach((id, result) -> orders.put(id, result.order()));
        return orders;
    }

    private static Result result(Piece piece, List<Piece> above, Map<String, Result> results) {
        int highest = 0;
        int highestCounting = 0;
        int sharing = 0;
        for (Piece inflow : above) {
            Result result = results.getOrDefault(inflow.id(), new Result(0, 0));
            highest = Math.max(highest, result.order());
            if (result.counts() > highestCounting) {
                highestCounting = result.counts();
                sharing = 1;
            } else if (result.counts() == highestCounting) {
                sharing++;
            }
        }
        if (above.isEmpty()) {
            return new Result(1, piece.minorArm() ? 0 : 1);
        }
        if (piece.minorArm() || highestCounting == 0) {
            return new Result(highest, 0);
        }
        int order = sharing > 1 ? highestCounting + 1 : highestCounting;
        return new Result(order, order);
    }
}
