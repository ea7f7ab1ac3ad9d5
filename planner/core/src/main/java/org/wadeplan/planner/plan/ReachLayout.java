package org.wadeplan.planner.plan;

import java.util.List;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.reach.SiteReaches;
import org.wadeplan.planner.round.Round;

/** Step 2 for a whole round: a reach for every site of the list, reserves too. */
public final class ReachLayout {

    private ReachLayout() {}

    /** The reaches that could be laid, in the order of the site list, with what stood in the way of the others. */
    public static Checked<List<Reach>> lay(Round round) {
        return new SiteReaches(round).lay();
    }
}
