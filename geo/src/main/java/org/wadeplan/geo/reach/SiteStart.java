package org.wadeplan.geo.reach;

import org.wadeplan.geo.crs.MetricPoint;

/**
 * Where a site's reach is to start.
 *
 * @param site site code
 * @param stream code of the stream line it lies on
 * @param shortCode begins the names of its stakes; 1 to 6 characters, so that {@code BR01-150} fits any handheld
 * @param start the downstream end, as surveyed; it need not lie on the line exactly
 * @param stakeBank the bank for the stakes
 */
public record SiteStart(String site, String stream, String shortCode, MetricPoint start, Bank stakeBank) {}
