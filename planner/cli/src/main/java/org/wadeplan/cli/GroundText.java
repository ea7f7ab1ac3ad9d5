package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.geo.access.Access;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.terrain.ElevationGrid;
import org.wadeplan.planner.reach.SiteGround;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** Slope and walk-in of the reaches in lines of text. */
final class GroundText {

    /** Nearer than this to the start, the nearest place of the reach is no other place, metres. */
    private static final double SAME_M = 5;

    private GroundText() {}

    /** Nothing where the round has neither heights nor roads. */
    static List<String> lines(Round round, List<SiteGround> grounds) {
        List<String> text = new ArrayList<>();
        Optional<ElevationGrid> grid = round.terrain().elevation();
        if (grid.isEmpty() && round.terrain().roads().isEmpty()) {
            return text;
        }
        TextTable table = new TextTable("site", "slope", "walk-in to the start");
        grounds.forEach(ground -> table.row(ground.site(), ground.slope().words(), walk(round, ground)));
        text.add("");
        text.addAll(table.lines());
        grid.ifPresent(heights ->
                text.addAll(TextTable.hanging("", "Slopes: a falling course fitted to " + heights.words() + ".")));
        if (round.terrain().roads().isPresent()) {
            text.add(
                    "Walk-ins: straight across the ground from the nearest road or track on the map; no path is promised.");
        }
        return text;
    }

    private static String walk(Round round, SiteGround ground) {
        if (ground.toStart().isEmpty()) {
            return "no roads in this round";
        }
        Access start = ground.toStart().get();
        return start.words() + nearer(start, ground.toReach()) + stakes(round, ground.site(), start);
    }

    private static String nearer(Access start, Optional<Access> reach) {
        Optional<WalkIn> toStart = start.walkIn();
        Optional<WalkIn> toReach = reach.flatMap(Access::walkIn);
        if (toReach.isEmpty()
                || toStart.filter(way -> way.lengthM() - toReach.get().lengthM() < SAME_M)
                        .isPresent()) {
            return "";
        }
        return String.format(
                Locale.ROOT,
                "; to the reach's nearest place %.0f m from %s",
                toReach.get().lengthM(),
                toReach.get().road());
    }

    private static String stakes(Round round, String id, Access start) {
        Optional<Bank> stakes = round.site(id).flatMap(Site::stakeBank);
        boolean opposite = start instanceof Access.OnFoot walk
                && walk.bank().isPresent()
                && stakes.isPresent()
                && !walk.bank().equals(stakes);
        return opposite ? "; stakes stand on the true " + stakes.get().name().toLowerCase(Locale.ROOT) : "";
    }
}
