package org.wadeplan.planner.round;

/** Which of its two meanings a conductivity reading has. */
public enum ConductivityBasis {
    /** At the water's own temperature: what power transfer needs. */
    AMBIENT,
    /** Specific conductance, referred to 25 degrees C. */
    SPECIFIC_25C
}
