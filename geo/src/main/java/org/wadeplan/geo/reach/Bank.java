package org.wadeplan.geo.reach;

import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.LineMeasure;

/** True left and true right: as seen looking downstream. */
public enum Bank {
    LEFT,
    RIGHT;

    /** The side of a stream line, which runs downstream, that a place lies on; left for a place on the line itself. */
    public static Bank of(MetricPoint place, LineMeasure streamLine) {
        return streamLine.foot(place).leftM() < 0 ? RIGHT : LEFT;
    }

    /**
     * A place on this bank.
     *
     * @param chainageM along the stream line, metres from its source
     * @param offM how far from the line, metres, such as half the channel's width
     */
    public MetricPoint beside(LineMeasure streamLine, double chainageM, double offM) {
        return streamLine.beside(chainageM, this == LEFT ? offM : -offM);
    }
}
