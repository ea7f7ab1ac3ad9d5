package org.wadeplan.planner.round;

/** How to estimate a drive that the travel table lacks: straight line times a factor at a speed, rounded up. */
public record TravelFallback(double factor, double speedKmH, int roundUpMin, String source) {}
