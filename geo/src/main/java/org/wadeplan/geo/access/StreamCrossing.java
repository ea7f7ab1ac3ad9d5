package org.wadeplan.geo.access;

/**
 * A place where a straight walk meets a stream line before it arrives.
 *
 * @param stream what the file calls the line
 * @param fromRoadM metres of walk up to it
 */
public record StreamCrossing(String stream, double fromRoadM) {}
