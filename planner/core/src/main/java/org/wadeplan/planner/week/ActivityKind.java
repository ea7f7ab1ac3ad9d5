package org.wadeplan.planner.week;

/** What a crew does for a stretch of time. */
public enum ActivityKind {
    LOAD,
    TRAVEL,
    /** On site, from the tailgate and back. */
    VISIT,
    /** Check and rinse between sites of one water. */
    RINSE,
    /** Treatment at the depot. */
    DECON,
    WAIT,
    UNLOAD
}
