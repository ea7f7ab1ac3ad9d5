package org.wadeplan.planner.pack.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.GridReference;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.planner.pack.map.ReachMap;
import org.wadeplan.planner.round.Site;

/** Where the reach is: map and stake table. */
record MapPage(
        String heading, List<Fact> facts, String drawing, String system, String uncertainty, List<StakeRow> stakes) {

    record StakeRow(
            String name, String subReach, String upstream, String east, String north, String degrees, String minutes) {}

    static Section section(PlanSource source, SiteDay visit, Templates templates) {
        String html = source.plan()
                .reach(visit.site().id())
                .map(reach -> templates.fill("map-page", of(source, visit.site(), reach)))
                .orElse("<h1>No reach was laid for this site</h1><p>See the findings in the round overview.</p>");
        return new Section("Reach map", visit.subject(source), visit.authorised(source), html);
    }

    static MapPage of(PlanSource source, Site site, Reach reach) {
        return new MapPage(
                site.id() + " " + site.name(),
                facts(site, reach),
                ReachMap.of(source.round().terrain(), reach).html(),
                source.round().terrain().crs().words(),
                String.format(
                        Locale.ROOT,
                        "Stakes are where the mapped line says, ± %s m. Measure between stakes with a tape along the "
                                + "channel; if a stake and the tape disagree by more, believe the tape from the start stake.",
                        Figures.plain(source.round().header().stakeUncertaintyM())),
                IntStream.range(0, reach.stakes().size())
                        .mapToObj(i -> row(reach, i))
                        .toList());
    }

    private static List<Fact> facts(Site site, Reach reach) {
        return List.of(
                new Fact("Stream", reach.stream()),
                new Fact(
                        "Reach",
                        String.format(
                                Locale.ROOT,
                                "%s m in %d sub-reaches of %s m, lettered upstream from the start; stakes on the true %s "
                                        + "bank (looking downstream)",
                                Figures.plain(reach.rule().lengthM()),
                                reach.rule().subReachCount(),
                                Figures.plain(reach.rule().subReachLengthM()),
                                reach.stakeBank() == Bank.LEFT ? "left" : "right")),
                new Fact("Parking", site.parking().orElse(Figures.UNKNOWN)),
                new Fact(
                        "Walk in",
                        site.walkInM().isPresent()
                                ? Figures.plain(site.walkInM().getAsDouble()) + " m"
                                : Figures.UNKNOWN));
    }

    static StakeRow row(Reach reach, int index) {
        Stake stake = reach.stakes().get(index);
        GridReference place = GridReference.of(stake, 0);
        String letter = index < reach.subReaches().size()
                ? String.valueOf(reach.subReaches().get(index).letter())
                : "END";
        return new StakeRow(
                stake.name(),
                index == 0 ? "START, " + letter : letter,
                Figures.plain(stake.upstreamM()),
                String.format(Locale.ROOT, "%.0f", stake.at().eastM()),
                String.format(Locale.ROOT, "%.0f", stake.at().northM()),
                place.decimalDegrees(),
                place.degreesMinutes());
    }
}
