package org.wadeplan.planner.round;

/**
 * When it counts as day and as dark.
 *
 * @param darkAfterSunsetMin dark begins this many minutes after sunset
 * @param dayFromCivilDawn true where day begins at civil dawn (sun 6 degrees below the horizon), false at sunrise
 * @param dayUntilBeforeSunsetMin out of the water this many minutes before sunset
 */
public record LightRules(
        int darkAfterSunsetMin, boolean dayFromCivilDawn, int dayUntilBeforeSunsetMin, String source) {}
