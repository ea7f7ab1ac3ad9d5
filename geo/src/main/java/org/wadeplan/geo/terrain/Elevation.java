package org.wadeplan.geo.terrain;

import java.util.OptionalDouble;
import org.wadeplan.geo.crs.MetricPoint;

/** How high the ground lies at a place of the round's metric system. */
@FunctionalInterface
public interface Elevation {

    /** For rounds without a grid: nothing is known anywhere. */
    Elevation UNKNOWN = place -> OptionalDouble.empty();

    /** Metres above the grid's own datum; empty outside the grid and where it has no value. */
    OptionalDouble elevationM(MetricPoint place);
}
