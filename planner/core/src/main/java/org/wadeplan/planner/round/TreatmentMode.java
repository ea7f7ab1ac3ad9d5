package org.wadeplan.planner.round;

/** How a treatment is applied. Spray is weaker than soak in several trials, so evidence never carries over. */
public enum TreatmentMode {
    SOAK,
    SPRAY,
    WIPE,
    STEAM,
    FREEZE,
    DRY
}
