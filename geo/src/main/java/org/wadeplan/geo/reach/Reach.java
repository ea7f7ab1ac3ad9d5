package org.wadeplan.geo.reach;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.LineString;

/**
 * The stretch of stream that a site's visit covers, starting at its downstream end.
 *
 * @param site site code
 * @param stream code of the stream line it lies on
 * @param rule length and number of sub-reaches
 * @param stakes from the start upstream, one more than there are sub-reaches
 * @param line the reach's own line from its start upstream, in the round's metric coordinate system
 * @param siteOffsetM how far the site's own point lay off the line, metres
 * @param stakeBank the bank for the stakes
 */
public record Reach(
        String site,
        String stream,
        ReachRule rule,
        List<Stake> stakes,
        LineString line,
        double siteOffsetM,
        Bank stakeBank) {

    public Reach {
        stakes = List.copyOf(stakes);
        if (stakes.size() != rule.stakeCount()) {
            throw new IllegalArgumentException(
                    site + " needs " + rule.stakeCount() + " stakes and has " + stakes.size());
        }
    }

    /** The downstream end. */
    public Stake start() {
        return stakes.get(0);
    }

    /** The upstream end. */
    public Stake end() {
        return stakes.get(stakes.size() - 1);
    }

    /** From A at the start upwards. */
    public List<SubReach> subReaches() {
        List<SubReach> pieces = new ArrayList<>();
        for (int i = 0; i < rule.subReachCount(); i++) {
            pieces.add(new SubReach((char) ('A' + i), stakes.get(i), stakes.get(i + 1)));
        }
        return List.copyOf(pieces);
    }
}
