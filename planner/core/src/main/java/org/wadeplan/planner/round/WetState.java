package org.wadeplan.planner.round;

/** Whether a site holds water. */
public enum WetState {
    DRY,
    POOLS,
    FLOWING
}
