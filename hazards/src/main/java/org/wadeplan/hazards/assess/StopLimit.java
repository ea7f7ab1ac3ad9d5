package org.wadeplan.hazards.assess;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bright line: work stops there whatever the rating.
 *
 * @param hazardId row of the register that it belongs to; {@code WADING} for the caps on wading
 * @param what the rule, to be read aloud
 * @param measure what is measured: "depth x speed"; empty where only eyes and ears can tell
 * @param limit the number; empty where there is none
 * @param unit of limit and planned value, blank for counts
 * @param planned today's planned or forecast value; empty where it is not known
 * @param state where the plan stands
 * @param source where the limit comes from
 */
public record StopLimit(
        String hazardId,
        String what,
        Optional<String> measure,
        OptionalDouble limit,
        String unit,
        OptionalDouble planned,
        StopState state,
        String source) {

    public boolean breached() {
        return state == StopState.BREACHED;
    }
}
