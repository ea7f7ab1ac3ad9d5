package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Cuts stream lines at their junctions and orders the pieces. */
final class OrderedPieces {

    private OrderedPieces() {}

    static List<OrderedPiece> of(StreamNetwork network) {
        Map<String, Map<Double, String>> nodes = nodes(network);
        List<StreamOrder.Piece> pieces = new ArrayList<>();
        List<OrderedPiece> shapes = new ArrayList<>();
        nodes.forEach((code, along) -> {
            List<Map.Entry<Double, String>> stops = List.copyOf(along.entrySet());
            for (int i = 1; i < stops.size(); i++) {
                Map.Entry<Double, String> upper = stops.get(i - 1);
                Map.Entry<Double, String> lower = stops.get(i);
                String id = Integer.toString(pieces.size());
                pieces.add(new StreamOrder.Piece(id, upper.getValue(), lower.getValue(), false));
                shapes.add(new OrderedPiece(code, upper.getKey(), lower.getKey(), 1));
            }
        });
        Map<String, Integer> orders = StreamOrder.strahler(pieces);
        List<OrderedPiece> ordered = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            Integer order = orders.get(Integer.toString(i));
            if (order != null) {
                OrderedPiece shape = shapes.get(i);
                ordered.add(new OrderedPiece(shape.code(), shape.fromM(), shape.toM(), order));
            }
        }
        return List.copyOf(ordered);
    }

    /** For every line its nodes by chainage: both ends, and each junction along it under the junction's one name. */
    private static Map<String, Map<Double, String>> nodes(StreamNetwork network) {
        Map<String, Map<Double, String>> nodes = new TreeMap<>();
        for (StreamLine line : network.lines()) {
            Map<Double, String> along = new TreeMap<>();
            along.put(0.0, line.code() + " source");
            along.put(network.measure(line.code()).lengthM(), line.code() + " mouth");
            nodes.put(line.code(), along);
        }
        int number = 0;
        for (Junction junction : network.junctions()) {
            String name = "junction " + number++;
            for (Junction.Arm arm : junction.arms()) {
                place(nodes.getOrDefault(arm.code(), new TreeMap<>()), arm.chainageM(), name);
            }
        }
        return nodes;
    }

    private static void place(Map<Double, String> along, double chainageM, String name) {
        for (Double stop : List.copyOf(along.keySet())) {
            if (Math.abs(stop - chainageM) <= Junctions.TOLERANCE_M) {
                along.put(stop, name);
                return;
            }
        }
        along.put(chainageM, name);
    }
}
