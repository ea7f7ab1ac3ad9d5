package org.wadeplan.geo.network;

/**
 * One of the four ways in which the ends of two lines can be laid together.
 *
 * @param part which of the parts that are left
 * @param before whether it comes above the line so far
 * @param turned whether it has to be turned round for it
 * @param gapM metres between the two ends
 */
record PieceFit(int part, boolean before, boolean turned, double gapM) {}
