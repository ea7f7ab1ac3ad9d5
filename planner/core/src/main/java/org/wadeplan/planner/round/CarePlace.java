package org.wadeplan.planner.round;

import java.util.Optional;
import org.wadeplan.geo.crs.MetricPoint;

/** A place of emergency care. */
public record CarePlace(String id, String name, MetricPoint at, Optional<String> open, Optional<String> note) {}
