package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.walk.ReachShift;
import org.wadeplan.planner.method.walk.WalkOver;
import org.wadeplan.planner.plan.ReachLayout;
import org.wadeplan.planner.round.Round;

/** A walk-over as lines of a terminal. */
final class WalkOverText {

    private WalkOverText() {}

    static List<String> lines(Round round, SiteCase site, WalkOver walk) {
        List<String> text = new ArrayList<>();
        text.add(site.site() + ", measured on arrival: " + String.join("; ", walk.readings()));
        text.add("Planned:  " + MethodWords.outcome(walk.planned()));
        text.add("Measured: " + MethodWords.outcome(walk.measured()));
        if (!walk.flipped()) {
            text.add("The method stays.");
        } else {
            text.add("The method changes.");
            walk.causes().forEach(cause -> text.addAll(TextTable.hanging("  because ", cause)));
            text.addAll(shift(round, site, walk));
        }
        text.add("Table " + walk.measured().table() + ", version by its SHA-256: "
                + walk.measured().tableHash().substring(0, 12));
        text.add("Stay out of what looks wrong, whatever the table says.");
        return text;
    }

    private static Optional<Double> lengthM(Round round, SiteCase site) {
        return ReachLayout.lay(round).value().orElse(List.of()).stream()
                .filter(reach -> reach.site().equals(site.site()))
                .map(reach -> reach.rule().lengthM())
                .findFirst();
    }

    private static List<String> shift(Round round, SiteCase site, WalkOver walk) {
        boolean known = round.depths().stream().anyMatch(point -> point.site().equals(site.site()));
        if (!known) {
            return TextTable.hanging(
                    "  shift   ", "no depths along this reach are known (depths.csv), so no shift can be worked out");
        }
        String wanted = MethodWords.method(walk.planned());
        Optional<ReachShift> shift = lengthM(round, site)
                .flatMap(length -> ReachShift.smallest(round.methodTable(), site, round.depths(), length, wanted));
        return TextTable.hanging(
                "  shift   ",
                shift.map(by -> String.format(
                                Locale.ROOT,
                                "start %d m %s: the reach is then at most %.2f m deep by the depths known, and %s holds;"
                                        + " check that the record may continue from there",
                                Math.abs(by.shiftM()),
                                by.shiftM() > 0 ? "upstream" : "downstream",
                                by.maxDepthM(),
                                wanted))
                        .orElse("no shift within the known depths brings " + wanted + " back"));
    }
}
