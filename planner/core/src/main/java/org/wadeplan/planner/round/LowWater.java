package org.wadeplan.planner.round;

import java.time.Instant;

/** A low tide at a place of the tide table. */
public record LowWater(String place, Instant at, String source) {}
