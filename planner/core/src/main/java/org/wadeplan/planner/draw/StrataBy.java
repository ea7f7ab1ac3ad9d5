package org.wadeplan.planner.draw;

/** What parts the frame into strata. */
public enum StrataBy {
    /** Nothing: the whole frame is one stratum. */
    NONE,
    /** Strahler order of each stretch between junctions. */
    ORDER,
    /** Catchment of each stream line. */
    CATCHMENT,
    /** Water of the table of waters, by distance from the mouth. */
    WATER,
    /** Within a distance of a road, or beyond it. */
    ROAD
}
