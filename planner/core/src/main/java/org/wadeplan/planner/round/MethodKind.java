package org.wadeplan.planner.round;

/** What a method does at the water. */
public enum MethodKind {
    ELECTROFISHING,
    NETTING,
    SPOTLIGHTING,
    DRY_RECORD,
    /** No visit: deferred or referred. */
    NONE
}
