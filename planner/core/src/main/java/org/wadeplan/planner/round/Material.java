package org.wadeplan.planner.round;

/** What an item is made of, as far as cleaning goes. Felt is the worst of the absorbent ones. */
public enum Material {
    HARD,
    ABSORBENT,
    FELT
}
