package org.wadeplan.planner.decon;

import org.wadeplan.planner.round.WaterPest.PestStatus;

/**
 * How much care a move asks for, from what is known at the source and from where the kit goes. Own scheme; the steps of a
 * tier are the least, and cleaning between any two waters stays a rule of its own.
 */
public enum Tier {
    T0("inspect and drain"),
    T1("inspect, scrub, drain and rinse"),
    T2("the full generic clean on all gear"),
    T3("the best graded evidence, soaks rather than sprays, and a second person checks and signs");

    /** Where the kit goes. */
    public enum Way {
        SAME_WATER_DOWNSTREAM,
        ANOTHER_WATER,
        /** Into a protected or closed water, or upstream across a barrier. */
        PROTECTED_OR_UP_A_BARRIER
    }

    private final String asks;

    Tier(String asks) {
        this.asks = asks;
    }

    /** What it asks for, in words. */
    public String asks() {
        return asks;
    }

    /** A protected water asks for the top tier whatever the source; unknown counts as suspected. */
    public static Tier of(PestStatus source, Way way) {
        return switch (way) {
            case SAME_WATER_DOWNSTREAM -> source == PestStatus.FREE ? T0 : T1;
            case ANOTHER_WATER ->
                switch (source) {
                    case FREE -> T1;
                    case UNKNOWN, SUSPECTED -> T2;
                    case KNOWN -> T3;
                };
            case PROTECTED_OR_UP_A_BARRIER -> T3;
        };
    }
}
