package org.wadeplan.planner.reach;

import java.util.List;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.search.Reason;

/**
 * What is in the way of one site's reach, and how far its start must move.
 *
 * @param site site code
 * @param stream code of its stream
 * @param start its start on the line
 * @param startM chainage of its start, metres
 * @param clear whether nothing in the way was found
 * @param inTheWay every reason met between the start and the reach's upper end
 * @param moves the ways out, nearest first; empty where there is none between the confluences
 * @param advice a sentence for each way out, or why there is none
 * @param room what the stream has to offer between its confluences, in words
 * @param passedUpstream stretches ruled out on the way up
 * @param passedDownstream stretches ruled out on the way down
 */
public record SiteAdvice(
        String site,
        String stream,
        MetricPoint start,
        double startM,
        boolean clear,
        List<Reason> inTheWay,
        List<Move> moves,
        List<String> advice,
        String room,
        List<RejectedStrip> passedUpstream,
        List<RejectedStrip> passedDownstream) {

    public SiteAdvice {
        inTheWay = List.copyOf(inTheWay);
        moves = List.copyOf(moves);
        advice = List.copyOf(advice);
        passedUpstream = List.copyOf(passedUpstream);
        passedDownstream = List.copyOf(passedDownstream);
    }

    /**
     * One way out.
     *
     * @param moveM metres along the stream; upstream above 0, downstream below 0
     * @param start the start then
     * @param startM its chainage, metres
     */
    public record Move(double moveM, MetricPoint start, double startM) {}
}
