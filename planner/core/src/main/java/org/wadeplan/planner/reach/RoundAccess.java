package org.wadeplan.planner.reach;

import java.util.Optional;
import org.wadeplan.geo.access.AccessPlanner;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Terrain;

/** The way on foot to places on the round's streams, where roads are known. */
@FunctionalInterface
public interface RoundAccess {

    /** Knows no road. */
    RoundAccess NONE = place -> Optional.empty();

    Optional<WalkIn> walkIn(LinePlace place);

    /** By the round's roads and tracks; {@link #NONE} where it has none. */
    static RoundAccess of(Round round) {
        return planner(round)
                .<RoundAccess>map(planner -> place ->
                        planner.toPlace(place.line(), place.chainageM()).walkIn())
                .orElse(NONE);
    }

    /** With everything that can be told of a walk; empty where the round has no roads. */
    static Optional<AccessPlanner> planner(Round round) {
        Terrain terrain = round.terrain();
        return terrain.roads()
                .map(roads -> new AccessPlanner(
                        roads,
                        terrain.network().graph().lines(),
                        terrain.ground(),
                        RoundLand.of(round),
                        AccessPlanner.WITHIN_M));
    }
}
