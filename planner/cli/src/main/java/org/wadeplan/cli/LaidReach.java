package org.wadeplan.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.access.Access;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachRule;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.geo.terrain.FittedSlope;
import org.wadeplan.planner.reach.SiteGround;

/**
 * A reach with what ground and roads say about it, as {@code reach lay --json} prints it.
 *
 * @param slope percent and window, or the reason why there is none
 * @param slopeWords the same in words
 * @param toStart the walk to its start: with a way, or with how far was looked in vain
 * @param toReach the walk to its place nearest to a road
 */
record LaidReach(
        String site,
        String stream,
        ReachRule rule,
        List<Stake> stakes,
        LineString line,
        double siteOffsetM,
        Bank stakeBank,
        FittedSlope slope,
        String slopeWords,
        Optional<Access> toStart,
        Optional<Access> toReach) {

    /** @param grounds one for each reach, in their order */
    static List<LaidReach> joined(List<Reach> reaches, List<SiteGround> grounds) {
        return IntStream.range(0, reaches.size())
                .mapToObj(i -> of(reaches.get(i), grounds.get(i)))
                .toList();
    }

    private static LaidReach of(Reach reach, SiteGround ground) {
        return new LaidReach(
                reach.site(),
                reach.stream(),
                reach.rule(),
                reach.stakes(),
                reach.line(),
                reach.siteOffsetM(),
                reach.stakeBank(),
                ground.slope(),
                ground.slope().words(),
                ground.toStart(),
                ground.toReach());
    }
}
