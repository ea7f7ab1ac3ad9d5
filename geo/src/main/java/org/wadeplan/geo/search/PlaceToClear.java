package org.wadeplan.geo.search;

import java.util.Optional;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.LinePlace;

/**
 * A point that reaches keep clear of.
 *
 * @param kind what reason it gives
 * @param noun what it is: {@code culvert}
 * @param id what its file calls it; blank where nothing does
 * @param at where it lies
 * @param on where it lies on a line; empty where it lies on none, then only the straight distance counts
 * @param clearM how far reaches keep clear of it, metres
 */
public record PlaceToClear(
        ReasonKind kind, String noun, String id, MetricPoint at, Optional<LinePlace> on, double clearM) {}
