package org.wadeplan.planner.round;

/** How specific conductance at 25 degrees is turned into ambient: "linear" or "exponential", with its rate per degree. */
public record ConductivityRule(String name, double perDegree, String source) {}
