package org.wadeplan.planner.round;

import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One part of a visit by one method: who it needs, when it may be, how long it takes where no history says better.
 *
 * @param order 1 for the first part
 * @param latestFinish the part ends by this time of day
 * @param inWaterMin how much of the part is spent in the water, minutes: what tide windows must hold
 * @param p50FixedMin median time on site for a stream of no width, minutes
 * @param p50PerWidthMMin added for each metre of width, minutes
 * @param p50PerFishMin added for each fish handled, minutes; 0 where the agency's figure does not part it off
 * @param p80Factor the 80th percentile as a multiple of the median
 * @param gapMinMin shortest time from the start of the part before to the start of this one, minutes
 * @param gapMaxMin longest such time, minutes
 */
public record MethodPart(
        VisitPart part,
        int order,
        Light light,
        Optional<LocalTime> latestFinish,
        int crewMin,
        int operatorsMin,
        int nettersMin,
        int firstAidersMin,
        int inWaterMin,
        double p50FixedMin,
        double p50PerWidthMMin,
        double p50PerFishMin,
        double p80Factor,
        OptionalInt gapMinMin,
        OptionalInt gapMaxMin,
        String source) {}
