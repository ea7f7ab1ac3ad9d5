package org.wadeplan.planner.reach;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.access.Access;
import org.wadeplan.geo.access.AccessPlanner;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.terrain.FittedSlope;
import org.wadeplan.geo.terrain.SlopeFit;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Terrain;

/** Slope and walk-in of each reach that was laid, from the round's heights and roads. */
public final class GroundLayout {

    /** Two walk-ins that differ by more than this and more than twofold cannot both be right, metres. */
    private static final double DIFFERS_M = 200;

    private static final double DIFFERS_TIMES = 2;

    private final Round round;
    private final LineSet lines;
    private final SlopeFit slopes;
    private final Optional<AccessPlanner> access;

    private GroundLayout(Round round) {
        Terrain terrain = round.terrain();
        this.round = round;
        this.lines = terrain.network().graph().lines();
        this.slopes = new SlopeFit(lines, terrain.ground());
        this.access = RoundAccess.planner(round);
    }

    /** One for each reach, in their order. Nothing is written into the sites: a site's own walk-in goes first. */
    public static List<SiteGround> of(Round round, List<Reach> reaches) {
        GroundLayout layout = new GroundLayout(round);
        return reaches.stream().map(layout::of).toList();
    }

    /** A warning for each site whose own walk-in is far from the straight one. */
    public static List<Problem> flagged(Round round, List<SiteGround> grounds) {
        return grounds.stream()
                .flatMap(ground -> differs(round, ground).stream())
                .toList();
    }

    private SiteGround of(Reach reach) {
        int line = round.terrain().network().number(reach.stream()).orElseThrow();
        double lengthM = lines.lengthM(line);
        double startM = Math.min(lengthM, reach.start().chainageM());
        double endM = Math.max(0, reach.end().chainageM());
        FittedSlope slope = slopes.along(line, startM, endM);
        return new SiteGround(
                reach.site(),
                slope,
                access.map(planner -> planner.toPlace(line, startM)),
                access.map(planner -> planner.toStretch(line, endM, startM)));
    }

    private static Optional<Problem> differs(Round round, SiteGround ground) {
        Optional<Double> onMap = ground.toStart().flatMap(Access::walkIn).map(WalkIn::lengthM);
        OptionalDouble stated = round.site(ground.site()).map(Site::walkInM).orElse(OptionalDouble.empty());
        return onMap.isPresent() && stated.isPresent() && differ(onMap.get(), stated.getAsDouble())
                ? Optional.of(problem(ground, stated.getAsDouble()))
                : Optional.empty();
    }

    private static boolean differ(double oneM, double otherM) {
        double lessM = Math.min(oneM, otherM);
        double moreM = Math.max(oneM, otherM);
        return moreM - lessM > DIFFERS_M && moreM > DIFFERS_TIMES * lessM;
    }

    private static Problem problem(SiteGround ground, double statedM) {
        return Problem.warning(
                "walk-in-differs",
                SourcePlace.part("sites.csv", ground.site()).column("walk_in_m"),
                String.format(Locale.ROOT, "the site list says %.0f m; straight across the map it is ", statedM)
                        + ground.toStart().map(Access::words).orElse(""),
                "figures within " + Math.round(DIFFERS_M) + " m of each other, or within a factor of "
                        + Math.round(DIFFERS_TIMES),
                "check which road may be driven to, and whether the map has it; the site list's figure is used");
    }
}
