package org.wadeplan.planner.round;

/** A drive between two places, minutes, with where the figure comes from. */
public record TravelLeg(String from, String to, int minutes, String source) {}
