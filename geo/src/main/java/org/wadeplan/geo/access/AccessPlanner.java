package org.wadeplan.geo.access;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.SegmentIndex.Snap;
import org.wadeplan.geo.terrain.Ground;

/**
 * Finds the nearest road or track to places on streams, and what lies on the straight walk from it.
 *
 * <p>Straight across the ground is a first estimate: no path, fence, cliff or bridge is known. The same place always gives the
 * same answer. Safe to share between threads.
 */
public final class AccessPlanner {

    /** How far roads are looked for unless told otherwise, metres: further is a day's walk with gear. */
    public static final double WITHIN_M = 5000;

    private final Roads roads;
    private final StreamsMet streams;
    private final Ground ground;
    private final LandCrossed land;
    private final double withinM;

    /**
     * @param streams all running downstream
     * @param ground for the climb; {@link Ground#UNKNOWN} where there is no grid
     * @param land parcels, with and without consent
     * @param withinM a road further off is none, metres
     */
    public AccessPlanner(Roads roads, LineSet streams, Ground ground, List<Land> land, double withinM) {
        this.roads = roads;
        this.streams = new StreamsMet(streams);
        this.ground = ground;
        this.land = new LandCrossed(land);
        this.withinM = withinM;
    }

    /** The walk alone, to the lower end of a stretch: what a search needs. */
    public Optional<WalkIn> walkIn(int line, double fromM, double toM) {
        return toPlace(line, Math.max(fromM, toM)).walkIn();
    }

    /** To one place, such as the start of a reach. */
    public Access toPlace(int line, double chainageM) {
        MetricPoint arrive = streams.streams().at(line, chainageM);
        return roads.nearest(arrive, withinM)
                .map(snap -> access(new StraightWalk(snap.line(), snap.at(), line, chainageM, arrive)))
                .orElseGet(() -> new Access.NoRoad(withinM));
    }

    /**
     * To the place of a stretch that lies nearest to a road; at the same distance, to the one nearest to its lower end.
     *
     * @param fromM chainage of one end, metres
     * @param toM chainage of the other
     */
    public Access toStretch(int line, double fromM, double toM) {
        double upperM = Math.min(fromM, toM);
        double lowerM = Math.max(fromM, toM);
        return new NearestApproach(roads, streams.streams(), line, bound(line, upperM, lowerM))
                .on(upperM, lowerM)
                .map(this::access)
                .orElseGet(() -> new Access.NoRoad(withinM));
    }

    /** No road that is further from the stretch than this can be the nearest. */
    private double bound(int line, double upperM, double lowerM) {
        double bound = withinM;
        for (double atM : new double[] {lowerM, (upperM + lowerM) / 2, upperM}) {
            Optional<Snap> snap = roads.nearest(streams.streams().at(line, atM), bound);
            bound = snap.map(Snap::distanceM).orElse(bound);
        }
        return bound;
    }

    private Access access(StraightWalk walk) {
        WalkIn way = new WalkIn(
                roads.lines().id(walk.road()),
                walk.leave(),
                walk.arrive(),
                walk.lengthM(),
                Climb.upM(walk, ground),
                land.by(walk));
        return new Access.OnFoot(way, roads.kind(walk.road()), streams.on(walk), streams.bank(walk));
    }
}
