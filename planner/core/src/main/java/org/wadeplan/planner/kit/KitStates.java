package org.wadeplan.planner.kit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What is known of a kit set, or of an item that must be clean on leaving, at a moment. */
public interface KitStates {

    /**
     * Why it may not be loaded for those waters at that time; empty where nothing is found against it, or where it never
     * needs to be clean.
     *
     * @param id kit set or item
     * @param at when it would be loaded
     */
    Optional<String> against(String id, Instant at, List<String> toWaters);

    /** What its being clean rests on, in words; empty where nothing happened to it yet. */
    Optional<String> restsOn(String id, Instant at);
}
