package org.wadeplan.geo.lines;

import java.util.List;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * Finds which lines run near a place.
 *
 * <p>A place falls onto the nearest point of the nearest segment, never onto a vertex because it is one. At the same
 * distance the line with the smaller number wins, then the smaller chainage: adding lines elsewhere changes nothing, and
 * asking one by one gives the same as asking for many.
 */
public interface SegmentIndex {

    /**
     * Where a place falls on a line.
     *
     * @param line the line's number
     * @param chainageM metres from its first vertex
     * @param distanceM metres from the place to the line, straight
     * @param at the point on the line
     */
    record Snap(int line, double chainageM, double distanceM, MetricPoint at) {}

    /**
     * The nearest points of up to so many different lines, nearest first.
     *
     * @param most how many lines at most
     * @param withinM no line further off than this, in metres; may be infinite
     */
    List<Snap> nearest(MetricPoint place, int most, double withinM);
}
