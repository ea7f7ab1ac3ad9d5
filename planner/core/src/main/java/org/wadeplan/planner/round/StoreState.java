package org.wadeplan.planner.round;

/** The state of an item or kit set as the round starts. */
public enum StoreState {
    CLEAN_DRY,
    WET,
    DIRTY,
    DRYING,
    OUT_OF_SERVICE
}
