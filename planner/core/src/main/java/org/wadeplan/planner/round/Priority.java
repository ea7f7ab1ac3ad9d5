package org.wadeplan.planner.round;

/** How much a site's visit matters in the round, highest first. */
public enum Priority {
    A,
    B,
    C
}
