package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The nodes of the graph where two lines or more meet, under the codes of their streams. */
final class Junctions {

    private Junctions() {}

    /** By node number. Where a line passes a node more than once, its smallest chainage stands. */
    static List<Junction> of(StreamGraph graph) {
        List<TreeMap<String, Double>> arms = new ArrayList<>();
        for (int node = 0; node < graph.nodeCount(); node++) {
            arms.add(new TreeMap<>());
        }
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            String code = graph.lines().id(graph.line(piece));
            arms.get(graph.fromNode(piece)).merge(code, graph.fromM(piece), Math::min);
            arms.get(graph.toNode(piece)).merge(code, graph.toM(piece), Math::min);
        }
        List<Junction> junctions = new ArrayList<>();
        for (int node = 0; node < graph.nodeCount(); node++) {
            if (arms.get(node).size() > 1) {
                junctions.add(new Junction(graph.nodeAt(node), arms(arms.get(node))));
            }
        }
        return List.copyOf(junctions);
    }

    private static List<Junction.Arm> arms(Map<String, Double> chainages) {
        List<Junction.Arm> arms = new ArrayList<>();
        chainages.forEach((code, atM) -> arms.add(new Junction.Arm(code, atM)));
        return arms;
    }
}
