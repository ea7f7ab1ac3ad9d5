package org.wadeplan.planner.round;

import java.util.Optional;

/**
 * A stretch of stream that counts as one water for decontamination: kit that leaves it is dirty for every other.
 *
 * @param stream code of its stream line
 * @param fromMouthMinM its lower end, metres from the mouth along the line
 * @param fromMouthMaxM its upper end, metres from the mouth along the line
 * @param rank 1 cleanest, upwards
 * @param protectedWater true where a pest must never arrive
 * @param tidePlace name in the tide table where it is tidal
 */
public record Water(
        String id,
        String name,
        String stream,
        double fromMouthMinM,
        double fromMouthMaxM,
        int rank,
        boolean protectedWater,
        boolean tidal,
        Optional<String> tidePlace,
        Optional<String> note) {}
