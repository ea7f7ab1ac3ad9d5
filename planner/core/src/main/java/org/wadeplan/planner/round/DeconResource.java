package org.wadeplan.planner.round;

import java.util.Optional;
import java.util.OptionalDouble;

/** A tub, bay, freezer or room at the depot that holds a number of kit sets at a time. */
public record DeconResource(
        String id,
        String label,
        int capacityKitSets,
        Optional<String> agent,
        OptionalDouble volumeL,
        OptionalDouble strengthGL,
        Optional<String> note) {}
