package org.wadeplan.planner.round;

import java.util.Optional;

/**
 * A step of cleaning that comes with or without a treatment.
 *
 * @param step brush, pick, soak, rinse, hang, dry (nobody busy) or check-rinse
 * @param minutes crew time, minutes; for soak the contact time of the treatment counts instead
 * @param when always, plant-fragments, chemical, heat, same-water, or the name of a treatment, whose row then stands in for
 *     the general rows of that step
 * @param resource the shared place it needs, such as the hot bay
 */
public record DeconStepRule(
        String step, String label, int minutes, String when, Optional<String> resource, String source) {}
