package org.wadeplan.planner.reach;

import java.util.List;
import org.wadeplan.geo.reach.LengthBand;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.search.Score;
import org.wadeplan.geo.search.StretchFacts;

/**
 * A candidate, laid out.
 *
 * @param rank 1 for the best
 * @param reach its stakes, line and stream; its site is the candidate's name, such as {@code C01}
 * @param water id of its water; blank where none holds it
 * @param catchment code of its stream's catchment
 * @param fromMouthM its start, metres from the mouth of its line
 * @param sizeWords how its length came about
 * @param score 0 to 100, with its parts
 * @param facts what is known of it
 * @param band how long it probably is on the ground
 * @param land the parcels that it runs over with their consent, and how much of it lies on none, in words
 * @param bankWords why the stakes stand on that bank
 * @param notChecked limits on figures that nobody knows here, in words
 */
public record ProposedReach(
        int rank,
        Reach reach,
        String water,
        String catchment,
        double fromMouthM,
        String sizeWords,
        Score score,
        StretchFacts facts,
        LengthBand band,
        List<String> land,
        String bankWords,
        List<String> notChecked) {

    public ProposedReach {
        land = List.copyOf(land);
        notChecked = List.copyOf(notChecked);
    }

    /** {@code C01}. */
    public String name() {
        return reach.site();
    }
}
