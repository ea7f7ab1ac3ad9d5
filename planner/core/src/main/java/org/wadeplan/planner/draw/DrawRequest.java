package org.wadeplan.planner.draw;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.wadeplan.geo.draw.Allocation;
import org.wadeplan.geo.draw.Loss;

/**
 * What to draw for a round, and what became of places drawn before.
 *
 * @param size reaches to visit
 * @param reservePct reaches in reserve, in percent of the size
 * @param strataBy what parts the frame into strata
 * @param allocation of the size to strata
 * @param point which point of its reach a drawn point becomes
 * @param seed of the draw
 * @param lost codes of drawn places that cannot be surveyed, with why
 */
public record DrawRequest(
        int size,
        int reservePct,
        StrataBy strataBy,
        Allocation allocation,
        ReachPoint point,
        long seed,
        Map<String, Loss> lost) {

    public static final int USUAL_RESERVE_PCT = 50;

    public DrawRequest {
        lost = Collections.unmodifiableMap(new LinkedHashMap<>(lost));
    }
}
