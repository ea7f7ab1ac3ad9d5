package org.wadeplan.geo.network;

/**
 * A place on a stream: never a point that one would have to find again.
 *
 * @param line the line's number
 * @param chainageM metres from its first vertex
 */
public record LinePlace(int line, double chainageM) {}
