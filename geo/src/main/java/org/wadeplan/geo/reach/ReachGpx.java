package org.wadeplan.geo.reach;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.geo.io.GpxContent;

/** The stakes of reaches as waypoints, and each reach as a route in fishing order: from its start upstream. */
public final class ReachGpx {

    private ReachGpx() {}

    /**
     * All reaches for one handheld, with nothing in it but codes, distances and the uncertainty.
     *
     * @param name of the file on the device
     * @param created the time to state
     * @param uncertaintyM of a stake's place on the ground, metres
     */
    public static GpxContent of(String name, List<Reach> reaches, Instant created, double uncertaintyM) {
        List<GpxContent.Waypoint> waypoints = new ArrayList<>();
        List<GpxContent.Route> routes = new ArrayList<>();
        for (Reach reach : reaches) {
            List<GpxContent.Waypoint> stakes =
                    reach.stakes().stream().map(stake -> waypoint(reach, stake)).toList();
            waypoints.addAll(stakes);
            routes.add(new GpxContent.Route(
                    reach.site(),
                    String.format(
                            Locale.ROOT,
                            "%.0f m upstream, in fishing order",
                            reach.rule().lengthM()),
                    stakes));
        }
        String description = String.format(
                Locale.ROOT, "Stakes of %d reaches, WGS 84, good to about %.0f m", reaches.size(), uncertaintyM);
        return new GpxContent(name, description, created, waypoints, routes);
    }

    private static GpxContent.Waypoint waypoint(Reach reach, Stake stake) {
        String bank = reach.stakeBank() == Bank.LEFT ? "true left" : "true right";
        String words = String.format(Locale.ROOT, "%s, %.0f m, %s bank", reach.site(), stake.upstreamM(), bank);
        return new GpxContent.Waypoint(stake.name(), words, stake.lonLat());
    }
}
