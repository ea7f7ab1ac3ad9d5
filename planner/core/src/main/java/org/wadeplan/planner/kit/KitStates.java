package org.wadeplan.planner.kit;

import java.time.Instant;
import java.util.Optional;
import org.wadeplan.planner.round.KitSet;

/** What is known of a kit set at a moment. */
public interface KitStates {

    /**
     * Why the set is not clean and dry at that time; empty where it is.
     *
     * @param at when it would be loaded
     */
    Optional<String> against(KitSet set, Instant at);

    /** What its being clean rests on, in words; empty where nothing happened to it yet. */
    Optional<String> restsOn(KitSet set, Instant at);
}
