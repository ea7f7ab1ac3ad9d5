package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.GridReference;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.search.Reason;
import org.wadeplan.geo.search.Score;
import org.wadeplan.geo.search.StretchFacts;
import org.wadeplan.geo.terrain.Slope;
import org.wadeplan.planner.pack.map.ReachMap;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.ProposedReach;
import org.wadeplan.planner.reach.RejectedStrip;
import org.wadeplan.planner.round.Round;

/** One candidate: its map, why it scores as it does, what rules the stream out beside it, its stakes. */
record CandidatePage(
        String heading,
        List<Fact> facts,
        String drawing,
        String system,
        List<ScoreRow> score,
        List<String> nearby,
        List<StakeLine> stakes) {

    /** As far along the stream as the map shows, roughly. */
    private static final double NEARBY_M = 150;

    private static final int MOST_NEARBY = 3;
    private static final int SIDE_BY_SIDE = 3;

    /** Three stakes side by side, so that the page holds everything. */
    record StakeLine(List<MapPage.StakeRow> cells) {}

    record ScoreRow(String name, String found, String points) {}

    static CandidatePage of(Round round, CandidateReport report, ProposedReach candidate) {
        List<RejectedStrip> nearby = nearby(report, candidate);
        return new CandidatePage(
                String.format(
                        Locale.ROOT,
                        "%s on %s, score %s of 100",
                        candidate.name(),
                        candidate.reach().stream(),
                        CandidateList.score(candidate.score())),
                facts(round, candidate),
                ReachMap.of(
                                round.terrain(),
                                candidate.reach(),
                                nearby.stream().map(RejectedStrip::line).toList())
                        .html(),
                round.terrain().crs().words(),
                candidate.score().parts().stream().map(CandidatePage::scoreRow).toList(),
                nearby.stream()
                        .map(strip -> ruledOut(strip, candidate))
                        .distinct()
                        .limit(MOST_NEARBY)
                        .toList(),
                stakes(candidate.reach()));
    }

    /** Column by column, so that each is read upwards from the start. */
    private static List<StakeLine> stakes(Reach reach) {
        int count = reach.stakes().size();
        int lines = (count + SIDE_BY_SIDE - 1) / SIDE_BY_SIDE;
        return IntStream.range(0, lines)
                .mapToObj(line -> new StakeLine(IntStream.range(0, SIDE_BY_SIDE)
                        .map(column -> column * lines + line)
                        .filter(stake -> stake < count)
                        .mapToObj(stake -> MapPage.row(reach, stake))
                        .toList()))
                .toList();
    }

    private static ScoreRow scoreRow(Score.Part part) {
        return new ScoreRow(part.name(), part.found(), CandidateList.points(part));
    }

    private static List<Fact> facts(Round round, ProposedReach candidate) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "Start",
                String.format(
                        Locale.ROOT,
                        "%.0f m above the mouth of its line; %s",
                        candidate.fromMouthM(),
                        GridReference.of(candidate.reach().start(), 0).decimalDegrees() + " (WGS 84)")));
        facts.add(new Fact(
                "Length", candidate.sizeWords() + "; " + candidate.band().words()));
        facts.add(new Fact("Ground", ground(candidate.facts())));
        facts.add(new Fact(
                "Walk in", candidate.facts().walkIn().map(CandidatePage::walk).orElse(Figures.UNKNOWN)));
        facts.add(new Fact("Land", String.join("; ", candidate.land())));
        facts.add(new Fact(
                "Stakes",
                "true " + (candidate.reach().stakeBank() == Bank.LEFT ? "left" : "right") + ": "
                        + candidate.bankWords() + "; ± "
                        + Figures.plain(round.header().stakeUncertaintyM()) + " m by handheld"));
        candidate.notChecked().forEach(each -> facts.add(new Fact("Not checked", each)));
        return facts;
    }

    private static String ground(StretchFacts facts) {
        String slope = facts.slope().map(CandidatePage::slope).orElse("slope " + Figures.UNKNOWN);
        String width = facts.width().map(known -> known.words()).orElse("width " + Figures.UNKNOWN);
        String order = facts.order().isPresent() ? "order " + facts.order().getAsInt() : "order " + Figures.UNKNOWN;
        return String.join("; ", order, width, slope);
    }

    private static String slope(Slope slope) {
        if (slope instanceof Slope.Fitted fitted) {
            return String.format(
                    Locale.ROOT, "slope %.2f %% over a window of %.0f m", fitted.percent(), fitted.windowM());
        }
        return "slope not resolved: " + ((Slope.Unresolved) slope).reason();
    }

    private static String walk(WalkIn walk) {
        String climb = walk.climbM().isPresent()
                ? String.format(Locale.ROOT, ", %.0f m up", walk.climbM().getAsDouble())
                : "";
        String land = walk.acrossWithoutConsent().isEmpty()
                ? ""
                : "; ACROSS LAND WITHOUT CONSENT: " + String.join(", ", walk.acrossWithoutConsent());
        return String.format(Locale.ROOT, "%.0f m straight from %s%s%s", walk.lengthM(), walk.road(), climb, land);
    }

    private static List<RejectedStrip> nearby(CandidateReport report, ProposedReach candidate) {
        return report.rejected().stream()
                .filter(strip -> strip.line().isWithinDistance(candidate.reach().line(), NEARBY_M))
                .sorted(Comparator.comparingDouble((RejectedStrip strip) ->
                                strip.line().distance(candidate.reach().line()))
                        .thenComparing(RejectedStrip::stream)
                        .thenComparingDouble(RejectedStrip::fromM))
                .toList();
    }

    private static String ruledOut(RejectedStrip strip, ProposedReach candidate) {
        String where = strip.stream().equals(candidate.reach().stream()) && strip.fromMouthM() >= candidate.fromMouthM()
                ? "above it"
                : "below or beside it";
        return "Ruled out " + where + ": "
                + strip.reasons().stream().map(Reason::sentence).collect(Collectors.joining("; "));
    }
}
