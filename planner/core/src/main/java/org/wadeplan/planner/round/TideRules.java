package org.wadeplan.planner.round;

/** How long before and after low water a tidal site can be waded, minutes. */
public record TideRules(int beforeLowMin, int afterLowMin, String source) {}
