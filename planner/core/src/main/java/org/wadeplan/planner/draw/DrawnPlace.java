package org.wadeplan.planner.draw;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * A drawn place as a crew and an analyst need it.
 *
 * @param code {@code D001} in the base, {@code R001} in reserve: at most 5 characters
 * @param role base or reserve
 * @param turn its turn within its role and stratum, from 1
 * @param use visit, lost or held
 * @param standsInFor the base place whose turn a reserve takes
 * @param lossGround dry, non-target, denied or no-reach, where it is lost
 * @param lossReason why, in words
 * @param stratum the stratum that it was drawn from
 * @param stream code of the stream line
 * @param chainageM the drawn point, metres from the source along the line
 * @param fromMouthM the drawn point, metres from the mouth along the line
 * @param at the drawn point
 * @param lonLat the same on WGS 84
 * @param unitLengthM length of the unit that was drawn, metres
 * @param inclusionProbability of the unit in the base; a reserve takes it over with its place
 * @param designWeightM metres of stream that it stands for as drawn
 * @param weightM metres of target stream that it stands for after the losses known so far; empty where it is not visited
 * @param reachStartM chainage of the reach's downstream end; empty where no reach can be laid
 * @param reachEndM chainage of its upstream end
 * @param land parcels under the reach with how consent stands on each; empty where the round maps none there
 * @param remarks what else is to be known, in sentences
 */
public record DrawnPlace(
        String code,
        String role,
        int turn,
        String use,
        Optional<String> standsInFor,
        Optional<String> lossGround,
        Optional<String> lossReason,
        String stratum,
        String stream,
        double chainageM,
        double fromMouthM,
        MetricPoint at,
        LonLat lonLat,
        double unitLengthM,
        double inclusionProbability,
        double designWeightM,
        OptionalDouble weightM,
        OptionalDouble reachStartM,
        OptionalDouble reachEndM,
        List<String> land,
        List<String> remarks) {

    public DrawnPlace {
        land = List.copyOf(land);
        remarks = List.copyOf(remarks);
    }
}
