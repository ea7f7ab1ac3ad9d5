package org.wadeplan.geo.access;

import java.util.List;
import java.util.OptionalDouble;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * The shortest way on foot from a road or track to a place on a stream, straight across the ground: a first estimate, no
 * promise of a path.
 *
 * @param road what the file calls the road or track
 * @param leave where the walk leaves it
 * @param arrive the place on the stream
 * @param lengthM straight length of the walk, metres
 * @param climbM metres up along the walk from the road to the stream; empty where no grid tells
 * @param acrossWithoutConsent parcels without consent that the walk crosses, by id, in walking order
 */
public record WalkIn(
        String road,
        MetricPoint leave,
        MetricPoint arrive,
        double lengthM,
        OptionalDouble climbM,
        List<String> acrossWithoutConsent) {

    public WalkIn {
        acrossWithoutConsent = List.copyOf(acrossWithoutConsent);
    }
}
