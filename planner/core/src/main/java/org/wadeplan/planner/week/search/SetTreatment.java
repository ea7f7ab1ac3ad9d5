package org.wadeplan.planner.week.search;

import java.util.List;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;

/**
 * What a kit set gets after a water, so that it may go to every other water of the round.
 *
 * @param resources index of the shared place of each step, -1 where it needs none
 * @param releasedFor bit per water to which the set may go afterwards
 * @param possible false where no row of the turnaround table releases the set to any other water
 */
record SetTreatment(
        List<String> fromWaters,
        List<DeconStep> steps,
        List<Integer> resources,
        List<Turnaround.Cover> covers,
        String reason,
        long releasedFor,
        boolean possible) {

    static SetTreatment impossible(List<String> fromWaters, String reason) {
        return new SetTreatment(fromWaters, List.of(), List.of(), List.of(), reason, 0, false);
    }
}
