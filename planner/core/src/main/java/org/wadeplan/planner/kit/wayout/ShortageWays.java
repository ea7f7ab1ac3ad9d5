package org.wadeplan.planner.kit.wayout;

import java.util.List;
import org.wadeplan.planner.kit.ShortageSummary;

/**
 * A shortage with its ways out.
 *
 * @param ways those that work, cheapest first, then those that help in part, then those that were refused
 */
public record ShortageWays(ShortageSummary shortage, List<WayOut> ways) {}
