package org.wadeplan.planner.round;

/** The light that a part of a visit needs. */
public enum Light {
    DAY,
    DARK,
    ANY
}
