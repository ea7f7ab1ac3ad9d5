package org.wadeplan.planner.round;

/** What a quantity in the kit needs is multiplied by. */
public enum KitPer {
    VISIT,
    PERSON,
    CREW_DAY
}
