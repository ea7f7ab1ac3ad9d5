package org.wadeplan.planner.round;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.access.Roads;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.terrain.ElevationGrid;
import org.wadeplan.geo.terrain.Ground;

/**
 * Everything with a geometry.
 *
 * @param roads from which people walk to the streams; empty where the round has none
 * @param elevation heights around the streams; empty where the round has none
 * @param lineKinds where the map says that a line is no open stream
 */
public record Terrain(
        CoordinateSystem crs,
        StreamNetwork network,
        List<CatchmentArea> catchments,
        List<Parcel> parcels,
        List<Barrier> barriers,
        Optional<Roads> roads,
        Optional<ElevationGrid> elevation,
        List<LineKindSpan> lineKinds) {

    /** Without roads and heights, all lines being streams. */
    public Terrain(
            CoordinateSystem crs,
            StreamNetwork network,
            List<CatchmentArea> catchments,
            List<Parcel> parcels,
            List<Barrier> barriers) {
        this(crs, network, catchments, parcels, barriers, Optional.empty(), Optional.empty(), List.of());
    }

    /** Heights with what can be told from them; unknown where the round has none. */
    public Ground ground() {
        return elevation.map(ElevationGrid::ground).orElse(Ground.UNKNOWN);
    }
}
