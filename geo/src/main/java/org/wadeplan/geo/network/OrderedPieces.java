package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;

/** The pieces of the graph under the codes of their streams, with their orders. */
final class OrderedPieces {

    private OrderedPieces() {}

    /** By stream code, then downstream; without pieces that have no order. */
    static List<OrderedPiece> of(StreamGraph graph) {
        StreamOrder orders = StreamOrder.of(graph);
        List<OrderedPiece> ordered = new ArrayList<>();
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            String code = graph.lines().id(graph.line(piece));
            double fromM = graph.fromM(piece);
            double toM = graph.toM(piece);
            orders.strahler(piece).ifPresent(strahler -> ordered.add(new OrderedPiece(code, fromM, toM, strahler)));
        }
        return List.copyOf(ordered);
    }
}
