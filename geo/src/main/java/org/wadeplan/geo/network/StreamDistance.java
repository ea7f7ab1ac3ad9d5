package org.wadeplan.geo.network;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far apart two places on the streams are, along them.
 *
 * @param throughM metres along the streams, up and down as it comes, the shortest way
 * @param withWaterM metres the water runs from the upper to the lower of the two; empty where none runs from either to the
 *     other, as between two tributaries
 */
public record StreamDistance(double throughM, OptionalDouble withWaterM) {

    /** Whether water of one place passes the other. */
    public boolean isFlowConnected() {
        return withWaterM.isPresent();
    }

    /** The distance between two places; empty where no streams join them. */
    public static Optional<StreamDistance> between(StreamGraph graph, LinePlace one, LinePlace other) {
        OptionalDouble throughM = along(graph, NetworkDistances.Way.EITHER, one, other);
        if (throughM.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble downM = along(graph, NetworkDistances.Way.DOWNSTREAM, one, other);
        OptionalDouble upM = along(graph, NetworkDistances.Way.DOWNSTREAM, other, one);
        boolean down = downM.isPresent() && (upM.isEmpty() || downM.getAsDouble() <= upM.getAsDouble());
        return Optional.of(new StreamDistance(throughM.getAsDouble(), down ? downM : upM));
    }

    private static OptionalDouble along(StreamGraph graph, NetworkDistances.Way way, LinePlace one, LinePlace other) {
        NetworkDistances distances = new NetworkDistances(graph, way);
        distances.from(one, Double.POSITIVE_INFINITY);
        return distances.toM(other);
    }
}
