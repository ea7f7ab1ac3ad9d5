package org.wadeplan.planner.decon.record;

import java.time.Instant;

/**
 * One stretch for which a kit set was in a water.
 *
 * @param from when it went in; {@link Instant#MIN} where it was before the round
 * @param until when it came out
 * @param where site of the visit, or {@code before the round}
 */
public record KitExposure(String kitSet, String water, String where, Instant from, Instant until) {}
