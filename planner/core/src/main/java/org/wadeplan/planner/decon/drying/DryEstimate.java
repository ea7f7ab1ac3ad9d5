package org.wadeplan.planner.decon.drying;

import java.time.Instant;
import java.util.Optional;

/**
 * When something may be dry to the touch. An estimate, never a clearance: only somebody who feels it inside and out can say.
 *
 * @param slowest the gear that dries last, with the weather it was worked out for
 * @param about empty where it cannot be said; {@code why} tells the reason
 */
public record DryEstimate(String slowest, Optional<Instant> about, String why) {}
