package org.wadeplan.geo.search;

import java.util.List;
import org.wadeplan.geo.network.StreamGraph;

/**
 * Where to search and what to keep clear of. Confluences and line ends are taken from the graph.
 *
 * @param places bridges, culverts, weirs, fords, tidal limits …
 * @param land parcels without consent
 * @param stretches tidal water, reaches that are there already
 */
public record SearchGround(
        StreamGraph graph,
        List<PlaceToClear> places,
        List<LandToClear> land,
        List<StretchToClear> stretches,
        CandidateFacts facts,
        LineTraits traits) {

    public SearchGround {
        places = List.copyOf(places);
        land = List.copyOf(land);
        stretches = List.copyOf(stretches);
    }

    /** Lines and nothing else. */
    public static SearchGround of(StreamGraph graph) {
        return new SearchGround(graph, List.of(), List.of(), List.of(), CandidateFacts.UNKNOWN, LineTraits.NONE);
    }
}
