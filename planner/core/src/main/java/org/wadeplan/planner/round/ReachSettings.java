package org.wadeplan.planner.round;

import java.util.Optional;
import org.wadeplan.geo.reach.ReachProtocol;
import org.wadeplan.geo.reach.ReachRule;
import org.wadeplan.geo.reach.WidthCurve;

/**
 * How reaches are laid.
 *
 * @param protocol length and pieces
 * @param widthCurve guesses widths where none was measured; empty where the round gives no curve
 * @param driftLimitM a past start farther than this from today's, along or off the line, is flagged, metres
 */
public record ReachSettings(ReachProtocol protocol, Optional<WidthCurve> widthCurve, double driftLimitM) {

    /** One sub-reach of the usual 15 m: beyond that, letters of two visits no longer mean the same water. Common practice. */
    public static final double USUAL_DRIFT_LIMIT_M = 15;

    /** One length everywhere, no curve, the usual limit. */
    public static ReachSettings fixed(ReachRule rule) {
        return new ReachSettings(ReachProtocol.of(rule), Optional.empty(), USUAL_DRIFT_LIMIT_M);
    }
}
