package org.wadeplan.planner.round;

/** How well a treatment is supported. */
public enum EvidenceGrade {
    /** Tested, complete. */
    A,
    /** Tested, partial, or on a surrogate. */
    B,
    /** An agency's instruction; trial not seen. */
    C,
    /** Tested and not effective: blocks the treatment for this pest and material. */
    X
}
