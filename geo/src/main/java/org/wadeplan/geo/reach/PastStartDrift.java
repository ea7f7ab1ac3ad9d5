package org.wadeplan.geo.reach;

import java.util.Locale;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.LineMeasure;

/**
 * How far a past start lay from today's, along the stream line and off it.
 *
 * @param at the past start, in the round's metric system
 * @param alongM metres along the line from today's start; upstream above 0, downstream below 0
 * @param offM metres off the line, straight
 * @param side which side of the line it lay on, looking downstream
 * @param limitM farther than this along or off the line is flagged, metres
 */
public record PastStartDrift(MetricPoint at, double alongM, double offM, Bank side, double limitM) {

    /**
     * Measures one past start.
     *
     * @param streamLine the site's line, running downstream
     * @param startM chainage of today's start
     */
    public static PastStartDrift of(MetricPoint at, LineMeasure streamLine, double startM, double limitM) {
        LineMeasure.Foot foot = streamLine.foot(at);
        return new PastStartDrift(
                at, startM - foot.chainageM(), foot.distanceM(), foot.leftM() < 0 ? Bank.RIGHT : Bank.LEFT, limitM);
    }

    public boolean beyondLimit() {
        return Math.abs(alongM) > limitM || offM > limitM;
    }

    /** {@code 3.2 m upstream, 1.1 m off to the true left}. */
    public String words() {
        String along = Math.abs(alongM) < 0.05
                ? "level with it"
                : String.format(Locale.ROOT, "%.1f m %s", Math.abs(alongM), alongM > 0 ? "upstream" : "downstream");
        String off = offM < 0.05
                ? "on the line"
                : String.format(Locale.ROOT, "%.1f m off to the true %s", offM, side == Bank.LEFT ? "left" : "right");
        return along + ", " + off;
    }
}
