package org.wadeplan.geo.search;

/**
 * A place on a line.
 *
 * @param line number of the line
 * @param chainageM metres from the line's first vertex
 */
public record LinePlace(int line, double chainageM) {}
