package org.wadeplan.planner.round;

import org.locationtech.jts.geom.Geometry;

/** A catchment's outline in the round's metric coordinate system. */
public record CatchmentArea(String code, String name, Geometry area) {}
