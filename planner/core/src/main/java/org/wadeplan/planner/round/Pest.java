package org.wadeplan.planner.round;

import java.util.List;
import java.util.Optional;

/**
 * An organism that must not be moved.
 *
 * @param severity 1 to 5
 * @param stages its life stages where evidence must cover each of them: the loss of a row about one then leaves it uncovered,
 *     and never lets it be forgotten; none where the pest counts as a whole
 */
public record Pest(String id, String name, int severity, Optional<String> note, List<String> stages) {

    /** A pest that counts as a whole. */
    public Pest(String id, String name, int severity, Optional<String> note) {
        this(id, name, severity, note, List.of());
    }
}
