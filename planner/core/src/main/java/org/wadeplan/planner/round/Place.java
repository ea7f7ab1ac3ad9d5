package org.wadeplan.planner.round;

import org.wadeplan.geo.crs.MetricPoint;

/** A named place that people drive from or to: the depot, a hospital. */
public record Place(String id, String name, MetricPoint at) {}
