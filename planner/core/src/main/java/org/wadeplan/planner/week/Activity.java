package org.wadeplan.planner.week;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.VisitPart;

/**
 * One stretch of a crew's day. Activities of a day follow each other without gaps or overlaps.
 *
 * @param place where it ends: a site code or the depot's place
 * @param site the site, for a visit
 * @param part the part of the visit
 * @param method the method, for a visit
 * @param kitSets kit sets in the water, or being treated
 * @param p50End for a visit, when it ends in half of all cases; it ends at {@code end} in four of five
 * @param note why it is there or how long it was estimated to take, in words
 */
public record Activity(
        ActivityKind kind,
        Instant start,
        Instant end,
        String place,
        Optional<String> site,
        Optional<VisitPart> part,
        Optional<String> method,
        List<String> kitSets,
        Optional<Instant> p50End,
        String note) {

    public int minutes() {
        return Math.toIntExact(Duration.between(start, end).toMinutes());
    }
}
