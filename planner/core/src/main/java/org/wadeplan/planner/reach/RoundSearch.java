package org.wadeplan.planner.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachProtocol;
import org.wadeplan.geo.reach.ReachProtocol.Sizing;
import org.wadeplan.geo.reach.ReachRule;
import org.wadeplan.geo.search.Candidate;
import org.wadeplan.geo.search.CandidateReach;
import org.wadeplan.geo.search.CandidateSearch;
import org.wadeplan.geo.search.RejectedStretch;
import org.wadeplan.geo.search.SearchGround;
import org.wadeplan.geo.search.SearchResult;
import org.wadeplan.geo.search.SearchRules;
import org.wadeplan.geo.search.SearchWatch;
import org.wadeplan.geo.search.StartMove;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.SearchSettings;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;

/** Searches a round's streams for reaches. The same round and request give the same report. */
public final class RoundSearch {

    private final Round round;
    private final SearchRequest request;
    private final StreamNetwork network;
    private final LineSet lines;
    private final LandUnder land;

    private RoundSearch(Round round, SearchRequest request) {
        this.round = round;
        this.request = request;
        this.network = round.terrain().network();
        this.lines = network.graph().lines();
        this.land = new LandUnder(round.terrain().parcels());
    }

    /**
     * Searches.
     *
     * @throws IllegalArgumentException where the request names a stream or site that the round does not have
     */
    public static CandidateReport search(Round round, SearchRequest request, SearchWatch watch) {
        return new RoundSearch(round, request).report(watch);
    }

    private CandidateReport report(SearchWatch watch) {
        SearchSettings settings = request.settings();
        Checked<List<Reach>> laid = new SiteReaches(round).lay();
        List<Reach> taken = laid.value().orElse(List.of()).stream()
                .filter(reach -> request.site().filter(reach.site()::equals).isEmpty())
                .toList();
        RoundGround ground = new RoundGround(round, settings);
        SearchGround found = ground.ground(taken);
        CandidateSearch search = new CandidateSearch(found, rules(Optional.empty()), watch);
        SearchResult result = search.result();
        List<Problem> problems = new ArrayList<>(ground.problems());
        problems.sort(Problem.WORST_FIRST);
        return new CandidateReport(
                round.header().id(),
                round.header().reach().protocol().words(),
                settings,
                request.stream(),
                result.complete(),
                result.candidates().stream()
                        .map(candidate ->
                                proposed(candidate, result.candidates().size()))
                        .toList(),
                result.startsTried(),
                result.tally(),
                result.counts(),
                request.withRejected() ? strips(search.rejected()) : List.of(),
                request.site().map(site -> advice(site, found, watch)),
                result.notChecked(),
                problems);
    }

    /** @param sized the length at one site, where that is known better than along its stream */
    private SearchRules rules(Optional<ReachRule> sized) {
        SearchSettings settings = request.settings();
        return new SearchRules(
                sized.map(ReachProtocol::of).orElse(round.header().reach().protocol()),
                settings.clearBy(),
                settings.clearM("confluence"),
                settings.clearM("line-end"),
                settings.layout(),
                settings.acrossLines(),
                settings.minGapM(),
                settings.limits(),
                settings.scores(),
                settings.best(),
                settings.bestOfWater().isPresent() ? settings.bestOfWater() : OptionalInt.empty(),
                request.stream().map(Set::of).orElse(Set.of()));
    }

    private ProposedReach proposed(Candidate candidate, int count) {
        String digits = Integer.toString(Math.max(2, Integer.toString(count).length()));
        String name = String.format(Locale.ROOT, "C%0" + digits + "d", candidate.rank());
        int line = candidate.start().line();
        String stream = lines.id(line);
        Optional<Bank> side = candidate.facts().walkIn().map(walk -> Bank.of(walk.leave(), network.measure(stream)));
        Reach reach = CandidateReach.of(
                candidate, name, side.orElse(Bank.LEFT), lines, round.terrain().crs());
        return new ProposedReach(
                candidate.rank(),
                reach,
                RoundGround.water(round, candidate.start()).map(Water::id).orElse(""),
                network.lines().get(line).catchment(),
                lines.lengthM(line) - candidate.start().chainageM(),
                candidate.sizeWords(),
                candidate.score(),
                candidate.facts(),
                candidate.band(),
                land.under(reach.line()),
                side.isPresent() ? "the side that people come from" : "no way in is known: true left until seen",
                candidate.notChecked());
    }

    private List<RejectedStrip> strips(List<RejectedStretch> rejected) {
        return rejected.stream().map(this::strip).toList();
    }

    private RejectedStrip strip(RejectedStretch rejected) {
        int line = rejected.stretch().line();
        LineString shape = lines.between(
                line, rejected.stretch().fromM(), rejected.stretch().toM());
        return new RejectedStrip(
                lines.id(line),
                rejected.stretch().fromM(),
                rejected.stretch().toM(),
                lines.lengthM(line) - rejected.stretch().toM(),
                shape,
                rejected.reasons());
    }

    /** Searched on its own, since the site's own width may give a length of its own. */
    private SiteAdvice advice(String id, SearchGround ground, SearchWatch watch) {
        Site site = round.site(id).orElseThrow(() -> new IllegalArgumentException("No site " + id));
        int line = network.number(site.stream()).orElseThrow();
        LinePlace start = new LinePlace(line, network.chainageM(site.stream(), site.start()));
        Optional<ReachRule> sized = new SiteReaches(round).sizing(site) instanceof Sizing.Sized known
                ? Optional.of(known.rule())
                : Optional.empty();
        StartMove move = new CandidateSearch(ground, rules(sized), watch).move(start);
        List<SiteAdvice.Move> moves = new ArrayList<>();
        move.upstream().ifPresent(shift -> moves.add(moved(shift, 1)));
        move.downstream().ifPresent(shift -> moves.add(moved(shift, -1)));
        moves.sort(Comparator.comparingDouble(each -> Math.abs(each.moveM())));
        return new SiteAdvice(
                id,
                site.stream(),
                at(start),
                start.chainageM(),
                move.isClear(),
                move.inTheWay(),
                moves,
                move.advice(),
                move.room(),
                strips(move.upstreamBlocked()),
                strips(move.downstreamBlocked()));
    }

    private SiteAdvice.Move moved(StartMove.Shift shift, int sign) {
        return new SiteAdvice.Move(
                sign * shift.moveM(), at(shift.to()), shift.to().chainageM());
    }

    private MetricPoint at(LinePlace place) {
        return lines.at(place.line(), place.chainageM());
    }
}
