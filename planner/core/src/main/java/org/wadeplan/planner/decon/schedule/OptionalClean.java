package org.wadeplan.planner.decon.schedule;

import java.time.Instant;
import org.wadeplan.planner.week.DeconTask;

/**
 * A cleaning that keeps no pest from another water, because the set goes back into the one it comes from before any other.
 *
 * @param water both left and entered next
 * @param nextAt when it is in that water again
 * @param nextSite where
 */
public record OptionalClean(DeconTask task, String water, Instant nextAt, String nextSite) {}
