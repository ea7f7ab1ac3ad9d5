package org.wadeplan.planner.reach;

import java.util.Optional;
import org.wadeplan.geo.access.Access;
import org.wadeplan.geo.terrain.FittedSlope;

/**
 * What ground and roads say about a site's reach.
 *
 * @param site site code
 * @param slope along the reach, over a stated window
 * @param toStart the walk to the reach's start; empty where the round has no roads
 * @param toReach the walk to the place of the reach nearest to a road; empty where the round has no roads
 */
public record SiteGround(String site, FittedSlope slope, Optional<Access> toStart, Optional<Access> toReach) {}
