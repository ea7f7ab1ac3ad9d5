package org.wadeplan.geo.search;

import org.locationtech.jts.geom.Geometry;

/**
 * An area that reaches keep off.
 *
 * @param id what its file calls it
 * @param state why: {@code consent refused}
 * @param area its outline in the lines' system
 * @param clearM how far reaches keep clear of its outline, metres straight; 0 for staying off it
 */
public record LandToClear(String id, String state, Geometry area, double clearM) {}
