package org.wadeplan.planner.round;

import java.util.Optional;

/** An organism that must not be moved. Severity 1 to 5. */
public record Pest(String id, String name, int severity, Optional<String> note) {}
