package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.geo.network.StreamGraph;

/** Everything that rules stretches out, numbered. Places come first. */
final class Hindrances {

    private final List<Hindrance> all = new ArrayList<>();
    private final Map<Hindrance, Integer> stated = new LinkedHashMap<>();
    private final int placeCount;
    private final int firstLand;

    Hindrances(SearchGround ground, SearchRules rules) {
        StreamGraph graph = ground.graph();
        for (int node = 0; node < graph.nodeCount(); node++) {
            node(graph, node, rules).ifPresent(all::add);
        }
        for (PlaceToClear place : ground.places()) {
            if (place.clearM() > 0) {
                String name = "the " + place.noun() + (place.id().isBlank() ? "" : " " + place.id());
                all.add(new Hindrance.Near(
                        place.kind(), place.noun(), name, place.at(), place.on(), -1, place.clearM()));
            }
        }
        placeCount = all.size();
        firstLand = all.size();
        for (LandToClear land : ground.land()) {
            all.add(land(land));
        }
    }

    private static Optional<Hindrance> node(StreamGraph graph, int node, SearchRules rules) {
        int arms = graph.arrivingCount(node) + graph.leavingCount(node);
        if (graph.isConfluence(node) && rules.confluenceClearM() > 0) {
            return Optional.of(new Hindrance.Near(
                    ReasonKind.CONFLUENCE,
                    "confluence",
                    "the confluence of " + lines(graph, node),
                    graph.nodeAt(node),
                    Optional.empty(),
                    node,
                    rules.confluenceClearM()));
        }
        if (arms == 1 && rules.lineEndClearM() > 0) {
            return Optional.of(new Hindrance.Near(
                    ReasonKind.LINE_END,
                    "line end",
                    (graph.arrivingCount(node) == 0 ? "the source of " : "the mouth of ") + lines(graph, node),
                    graph.nodeAt(node),
                    Optional.empty(),
                    node,
                    rules.lineEndClearM()));
        }
        return Optional.empty();
    }

    /** Ids of the lines that meet at a node, each once, in order. */
    static String lines(StreamGraph graph, int node) {
        TreeSet<String> ids = new TreeSet<>();
        for (int i = 0; i < graph.arrivingCount(node); i++) {
            ids.add(graph.lines().id(graph.line(graph.arriving(node, i))));
        }
        for (int i = 0; i < graph.leavingCount(node); i++) {
            ids.add(graph.lines().id(graph.line(graph.leaving(node, i))));
        }
        return String.join(", ", ids);
    }

    private static Hindrance land(LandToClear land) {
        boolean widened = land.clearM() > 0;
        return new Hindrance.Stated(
                ReasonKind.LAND,
                "on land without consent",
                (widened ? "on or within " + Bounds.number(land.clearM()) + " m of " : "on ") + "the parcel "
                        + land.id() + ", " + land.state(),
                "only land with consent");
    }

    /** Number of a reason in words; the same words have one number. */
    int stated(Hindrance.Stated hindrance) {
        return stated.computeIfAbsent(hindrance, added -> {
            all.add(added);
            return all.size() - 1;
        });
    }

    Hindrance get(int hindrance) {
        return all.get(hindrance);
    }

    /** Confluences, line ends and obstacles: hindrances 0 up to this. */
    List<Hindrance.Near> places() {
        List<Hindrance.Near> places = new ArrayList<>(placeCount);
        for (int i = 0; i < placeCount; i++) {
            places.add((Hindrance.Near) all.get(i));
        }
        return places;
    }

    int firstLand() {
        return firstLand;
    }
}
