package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.util.Optional;

/**
 * A step of the selected cleaning; everything in words, and what its timer needs.
 *
 * @param amounts strength or heat to reach, and how to make the bath up
 * @param contactMin minutes in contact, for a step that has a timer
 */
public record StepRow(
        String id,
        String when,
        String step,
        String minutes,
        String where,
        String amounts,
        String boxes,
        Instant plannedStart,
        Optional<Integer> contactMin) {}
