package org.wadeplan.geo.network;

import java.util.List;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * A place where stream lines meet.
 *
 * @param at the place
 * @param arms the lines that meet there, by code and chainage
 */
public record Junction(MetricPoint at, List<Arm> arms) {

    public Junction {
        arms = List.copyOf(arms);
    }

    /**
     * One line at a junction.
     *
     * @param code the line's code
     * @param chainageM where along it the junction lies, metres from its source
     */
    public record Arm(String code, double chainageM) {}
}
