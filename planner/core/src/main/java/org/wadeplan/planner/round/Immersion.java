package org.wadeplan.planner.round;

/** How much of an item may go into a bath. */
public enum Immersion {
    WHOLE,
    /** Only parts of it, which its label names; the rest is wiped. */
    PART,
    /** Never: wipe it, and immerse nothing. */
    NONE
}
