package org.wadeplan.planner.decon.ledger;

import java.util.EnumSet;
import java.util.Set;

/** Where a kit set stands between one water and the next. What a state may become says {@link #next()}; all else is a breach. */
public enum KitState {
    /** Touched nothing on file since it was last clean. */
    CLEAN_DRY("clean and dry"),
    /** At a water, or on the way between two sites of one water. */
    IN_USE("in use"),
    /** Out of the water and not treated. */
    DIRTY("dirty"),
    /** Somebody is busy cleaning it. */
    TREATING("being treated"),
    /** Treated, and drying runs alone. */
    DRYING("drying"),
    /** Treated and dry for as long as the evidence asks; for which waters, the ledger says. */
    RELEASED("released"),
    OUT_OF_SERVICE("out of service");

    private final String word;

    KitState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /**
     * What it may become. What is released becomes dirty where a pest turns out to have been there that its treatment does
     * not cover; whatever comes back into service is treated first.
     */
    public Set<KitState> next() {
        return switch (this) {
            case CLEAN_DRY -> EnumSet.of(IN_USE, TREATING, OUT_OF_SERVICE);
            case IN_USE -> EnumSet.of(DIRTY, OUT_OF_SERVICE);
            case DIRTY -> EnumSet.of(IN_USE, TREATING, OUT_OF_SERVICE);
            case TREATING -> EnumSet.of(DRYING, RELEASED, DIRTY, OUT_OF_SERVICE);
            case DRYING -> EnumSet.of(RELEASED, DIRTY, TREATING, OUT_OF_SERVICE);
            case RELEASED -> EnumSet.of(IN_USE, DIRTY, TREATING, OUT_OF_SERVICE);
            case OUT_OF_SERVICE -> EnumSet.of(DIRTY);
        };
    }

    public boolean mayBecome(KitState other) {
        return next().contains(other);
    }
}
