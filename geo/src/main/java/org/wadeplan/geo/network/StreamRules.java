package org.wadeplan.geo.network;

import org.wadeplan.geo.terrain.Elevation;

/**
 * By what measures stream lines become a network.
 *
 * @param snapToleranceM how near a loose end meets another line, metres, 0 or more
 * @param gapMaxM how near a loose end is reported as a likely gap, metres
 * @param elevation how high the ground lies, to tell which way the water runs
 * @param elevationStepM falls and rises up to this count as flat, metres: what the grid can tell apart
 */
public record StreamRules(double snapToleranceM, double gapMaxM, Elevation elevation, double elevationStepM) {

    /** Wider gaps are rarely slips of drawing; common practice. */
    public static final double GAP_MAX_M = 10;

    /** Grids of a country are stored in whole metres, or are no better; common practice. */
    public static final double ELEVATION_STEP_M = 1;

    /** For rounds that say nothing: no grid, half a metre, ten metres. */
    public static final StreamRules USUAL =
            new StreamRules(StreamNoding.SNAP_TOLERANCE_M, GAP_MAX_M, Elevation.UNKNOWN, ELEVATION_STEP_M);

    public StreamRules withSnapToleranceM(double changedM) {
        return new StreamRules(changedM, gapMaxM, elevation, elevationStepM);
    }

    /**
     * With a grid.
     *
     * @param stepM the grid's own step; a finer one than before changes nothing, since grids are rougher than their digits
     */
    public StreamRules with(Elevation grid, double stepM) {
        return new StreamRules(snapToleranceM, gapMaxM, grid, Math.max(elevationStepM, stepM));
    }
}
