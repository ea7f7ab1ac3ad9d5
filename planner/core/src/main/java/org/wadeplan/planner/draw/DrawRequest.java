package org.wadeplan.planner.draw;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.wadeplan.geo.draw.Allocation;
import org.wadeplan.geo.draw.Loss;

/**
 * What to draw for a round, and what became of places drawn before.
 *
 * @param size reaches to visit
 * @param reservePct reaches in reserve, in percent of the size
 * @param strataBy what parts the frame into strata
 * @param allocation of the size to strata
 * @param roadWithinM straight distance to the nearest road, metres: stretches beyond it are left out, or with
 *     {@link StrataBy#ROAD} make a stratum of their own; empty where roads do not matter
 * @param point which point of its reach a drawn point becomes
 * @param seed of the draw
 * @param lost codes of drawn places that cannot be surveyed, with why
 */
public record DrawRequest(
        int size,
        int reservePct,
        StrataBy strataBy,
        Allocation allocation,
        OptionalDouble roadWithinM,
        ReachPoint point,
        long seed,
        Map<String, Loss> lost) {

    public static final int USUAL_RESERVE_PCT = 50;

    /** Where roads part the frame and no distance is given: about as far as gear is carried gladly, common practice. */
    public static final double USUAL_ROAD_M = 500;

    public DrawRequest {
        lost = Collections.unmodifiableMap(new LinkedHashMap<>(lost));
    }

    /** Whether stretches far from roads are left out, rather than drawn from apart or not told apart. */
    boolean filtersByRoad() {
        return roadWithinM.isPresent() && strataBy != StrataBy.ROAD;
    }

    /** Whether roads matter at all. */
    boolean needsRoads() {
        return roadWithinM.isPresent() || strataBy == StrataBy.ROAD;
    }

    double roadM() {
        return roadWithinM.orElse(USUAL_ROAD_M);
    }
}
