package org.wadeplan.geo.reach;

/**
 * One of the equal pieces of a reach.
 *
 * @param letter A at the downstream end, then upwards
 * @param downstream stake at its lower end
 * @param upstream stake at its upper end
 */
public record SubReach(char letter, Stake downstream, Stake upstream) {

    public double lengthM() {
        return upstream.upstreamM() - downstream.upstreamM();
    }
}
