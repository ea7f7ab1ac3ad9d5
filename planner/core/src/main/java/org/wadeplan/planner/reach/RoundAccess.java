package org.wadeplan.planner.reach;

import java.util.Optional;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.planner.round.Round;

/** The way on foot to places on the round's streams, where roads are known. */
@FunctionalInterface
public interface RoundAccess {

    /** Knows no road. */
    RoundAccess NONE = place -> Optional.empty();

    Optional<WalkIn> walkIn(LinePlace place);

    /** By the round's roads and tracks. */
    static RoundAccess of(Round round) {
        return NONE;
    }
}
