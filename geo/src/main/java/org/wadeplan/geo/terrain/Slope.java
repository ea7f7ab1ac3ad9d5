package org.wadeplan.geo.terrain;

/** How steeply a stretch of stream falls, or why the grid cannot tell. */
public sealed interface Slope {

    /**
     * A slope that the grid resolves.
     *
     * @param percent fall per length along the line, in percent, 0 or more
     * @param windowM length of the window over which it was fitted, metres along the line
     */
    record Fitted(double percent, double windowM) implements Slope {}

    /**
     * No slope, since a number would pretend.
     *
     * @param reason a clause: {@code the grid's steps of 1 m over a window of 500 m tell no less than 0.20 %}
     */
    record Unresolved(String reason) implements Slope {}
}
