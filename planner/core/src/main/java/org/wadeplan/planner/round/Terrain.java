package org.wadeplan.planner.round;

import java.util.List;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.network.StreamNetwork;

/** Everything with a geometry. */
public record Terrain(
        CoordinateSystem crs,
        StreamNetwork network,
        List<CatchmentArea> catchments,
        List<Parcel> parcels,
        List<Barrier> barriers) {}
