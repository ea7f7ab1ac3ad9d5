package org.wadeplan.planner.round;

/** What a kit set is for. */
public enum KitPurpose {
    WADING,
    TRAPS,
    WADERS_ONLY
}
