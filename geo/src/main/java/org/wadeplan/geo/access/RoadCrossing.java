package org.wadeplan.geo.access;

/**
 * A place where a road or track meets a stream line: a bridge, a culvert or a ford, whichever it is.
 *
 * @param line number of the stream's line
 * @param chainageM along it, metres
 * @param road what people call the road
 * @param kind the file's word for what the road is; blank where it does not say
 */
public record RoadCrossing(int line, double chainageM, String road, String kind) {}
