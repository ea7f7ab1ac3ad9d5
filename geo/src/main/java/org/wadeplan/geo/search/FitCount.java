package org.wadeplan.geo.search;

/**
 * What one way of measuring distances leaves.
 *
 * @param clearBy how distances were measured
 * @param ruledOutM length ruled out for any reason, metres
 * @param wholeReaches reaches that could be laid end to end from the downstream end of each run, were nothing ruled out
 * @param clearReaches those of them that touch nothing ruled out
 */
public record FitCount(ClearBy clearBy, double ruledOutM, int wholeReaches, int clearReaches) {}
