package org.wadeplan.planner.decon.trace;

import java.time.Instant;
import java.util.Optional;

/** A pest that somebody saw in a water. */
public record Find(String water, String pest, Instant seen, Optional<String> site, Optional<String> note) {}
