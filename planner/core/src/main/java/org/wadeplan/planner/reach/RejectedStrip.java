package org.wadeplan.planner.reach;

import java.util.List;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.search.Reason;

/**
 * A stretch that holds no reach, to be drawn.
 *
 * @param stream code of its stream
 * @param fromM chainage of its upper end, metres
 * @param toM chainage of its lower end, metres
 * @param fromMouthM its lower end, metres from the mouth of its line
 * @param line running downstream, in the round's metric system
 * @param reasons every reason, first ones first
 */
public record RejectedStrip(
        String stream, double fromM, double toM, double fromMouthM, LineString line, List<Reason> reasons) {

    public RejectedStrip {
        reasons = List.copyOf(reasons);
    }

    public double lengthM() {
        return toM - fromM;
    }
}
