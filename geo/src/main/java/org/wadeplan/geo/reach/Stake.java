package org.wadeplan.geo.reach;

import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * A stake that marks one end of a sub-reach.
 *
 * @param name unique in the round and at most 10 characters, so that any handheld shows it whole: {@code BR01-015}
 * @param upstreamM distance from the reach's start, measured upstream along the line, metres
 * @param chainageM chainage along the digitised line, growing downstream from the source, metres
 * @param fromMouthM distance to the mouth along the line, metres
 * @param at place in the round's metric coordinate system, on the line
 * @param lonLat the same place on WGS 84
 */
public record Stake(
        String name, double upstreamM, double chainageM, double fromMouthM, MetricPoint at, LonLat lonLat) {}
