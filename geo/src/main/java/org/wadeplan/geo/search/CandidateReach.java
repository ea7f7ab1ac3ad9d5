package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachRule;
import org.wadeplan.geo.reach.Stake;

/** Lays a candidate out: its stakes and its line, as for a site's reach. */
public final class CandidateReach {

    private CandidateReach() {}

    /**
     * The candidate as a reach, its site being its name.
     *
     * @param name short and unique, begins the names of its stakes; 1 to 6 letters and digits
     * @param bank the bank for the stakes
     */
    public static Reach of(Candidate candidate, String name, Bank bank, LineSet lines, CoordinateSystem system) {
        ReachRule rule = candidate.rule();
        List<Stake> stakes = new ArrayList<>();
        for (int i = 0; i < rule.stakeCount(); i++) {
            double upstreamM = rule.lengthM() * i / rule.subReachCount();
            LinePlace place = candidate.upstream(upstreamM);
            MetricPoint at = lines.at(place.line(), place.chainageM());
            stakes.add(new Stake(
                    String.format(Locale.ROOT, "%s-%03d", name, Math.round(upstreamM)),
                    upstreamM,
                    place.chainageM(),
                    lines.lengthM(place.line()) - place.chainageM(),
                    at,
                    system.toLonLat(at)));
        }
        return new Reach(name, lines.id(candidate.start().line()), rule, stakes, candidate.line(lines), 0, bank);
    }
}
