package org.wadeplan.geo.network;

/**
 * A stretch of one stream line between junctions, with its order.
 *
 * @param code the stream line
 * @param fromM its upper end, chainage in metres from the source
 * @param toM its lower end, chainage in metres from the source
 * @param strahler Strahler order, 1 or more
 */
public record OrderedPiece(String code, double fromM, double toM, int strahler) {}
