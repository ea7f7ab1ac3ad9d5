package org.wadeplan.planner.plan;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachLayer;
import org.wadeplan.geo.reach.SiteStart;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** Step 2 for a whole round: a reach for every site of the list, reserves too. */
public final class ReachLayout {

    private ReachLayout() {}

    /** The reaches that could be laid, in the order of the site list, with what stood in the way of the others. */
    public static Checked<List<Reach>> lay(Round round) {
        List<Reach> reaches = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        ReachLayer layer = new ReachLayer(
                round.terrain().network(), round.terrain().crs(), round.header().reachRule());
        for (Site site : round.sites()) {
            Checked<Reach> laid = layer.lay(
                    new SiteStart(site.id(), site.stream(), site.shortCode(), site.start(), site.stakeBank()),
                    SourcePlace.part("sites.csv", site.id()));
            laid.value().ifPresent(reaches::add);
            problems.addAll(laid.problems());
        }
        return Checked.of(reaches, problems);
    }
}
