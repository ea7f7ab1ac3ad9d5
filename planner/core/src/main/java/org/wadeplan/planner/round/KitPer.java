package org.wadeplan.planner.round;

/** What a quantity in the kit needs is multiplied by. */
public enum KitPer {
    VISIT,
    PERSON,
    /** Everyone on the crew-day who may work with a live circuit; whoever may not stays out of the water while it is on. */
    LIVE_CIRCUIT_PERSON,
    CREW_DAY
}
