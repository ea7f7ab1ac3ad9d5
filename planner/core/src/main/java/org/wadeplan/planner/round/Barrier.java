package org.wadeplan.planner.round;

import java.util.Optional;
import org.wadeplan.geo.crs.MetricPoint;

/** A weir, culvert, ford or bridge. */
public record Barrier(String id, String stream, String kind, MetricPoint at, Optional<String> note) {}
