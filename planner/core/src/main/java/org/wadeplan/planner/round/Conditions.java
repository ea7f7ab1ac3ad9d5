package org.wadeplan.planner.round;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is expected at a site on the day. Every value may be unknown.
 *
 * @param depthVelocityM2S depth times speed at the fastest wading point, m2/s
 * @param maxDepthM deepest point of the reach, m
 * @param maxDepthSdM its standard uncertainty, m
 * @param conductivityUsCm ambient conductivity, at the water's own temperature, uS/cm
 * @param conductivitySdUsCm its standard uncertainty, uS/cm
 * @param clarityM how far one sees in the water, m
 * @param waterTempC warmest water expected in the day, degrees C
 */
public record Conditions(
        OptionalDouble widthM,
        Optional<WetState> wetState,
        OptionalDouble depthVelocityM2S,
        OptionalDouble maxDepthM,
        OptionalDouble maxDepthSdM,
        OptionalDouble conductivityUsCm,
        OptionalDouble conductivitySdUsCm,
        OptionalDouble clarityM,
        OptionalDouble waterTempC) {}
