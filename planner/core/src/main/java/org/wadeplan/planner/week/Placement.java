package org.wadeplan.planner.week;

import java.time.Instant;
import java.util.Optional;
import org.wadeplan.planner.round.VisitPart;

/**
 * Why a part of a visit stands where it does.
 *
 * @param windowStart the window it stands in opens
 * @param windowEnd the window closes
 * @param binding what bounds it, in words: {@code finish by 13:00 (rule 6)}
 * @param slackMin minutes it could start later with everything else as planned and still end inside its window
 */
public record Placement(
        String site,
        VisitPart part,
        Optional<Instant> windowStart,
        Optional<Instant> windowEnd,
        String binding,
        int slackMin) {}
