package org.wadeplan.planner.round;

/**
 * A stretch of a stream line that the map says is no open stream, or some special one.
 *
 * @param stream code of its stream line
 * @param kind the map's word, by the words known here: lake, pipe, culvert, canal, ditch, tidal, coast
 * @param fromM chainage of its upper end, metres
 * @param toM chainage of its lower end, metres
 */
public record LineKindSpan(String stream, String kind, double fromM, double toM) {}
