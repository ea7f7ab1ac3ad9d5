package org.wadeplan.geo.search;

/**
 * A stretch of stream that reaches keep off: tidal water, a reach that is there already.
 *
 * @param kind what reason it gives
 * @param group reasons of one group are added up together: {@code in tidal water}
 * @param name {@code the reach of BRN-01}
 * @param stretch where it is
 * @param clearM how far reaches keep clear of its ends, metres along the network whatever the rules say
 */
public record StretchToClear(ReasonKind kind, String group, String name, LineStretch stretch, double clearM) {}
