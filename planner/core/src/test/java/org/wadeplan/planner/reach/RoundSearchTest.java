package org.wadeplan.planner.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.geo.search.ClearBy;
import org.wadeplan.geo.search.LengthTally;
import org.wadeplan.geo.search.Reason;
import org.wadeplan.geo.search.ReasonKind;
import org.wadeplan.geo.search.SearchWatch;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.SearchSettings;

/** On the invented demo round, whose streams meet nowhere. */
class RoundSearchTest {

    private static final Round ROUND = DemoRound.resolved();

    private static CandidateReport search(SearchRequest request) {
        return RoundSearch.search(ROUND, request, SearchWatch.NONE);
    }

    private static CandidateReport all(ClearBy clearBy) {
        return search(SearchRequest.all(SearchSettings.USUAL.measured(clearBy).proposing(1000)));
    }

    private static SiteAdvice advice(String site) {
        return search(new SearchRequest(
                        SearchSettings.USUAL,
                        Optional.of(ROUND.site(site).orElseThrow().stream()),
                        Optional.of(site),
                        false))
                .site()
                .orElseThrow();
    }

    private static Geometry parcel(String id) {
        return ROUND.terrain().parcels().stream()
                .filter(parcel -> parcel.id().equals(id))
                .map(Parcel::area)
                .findFirst()
                .orElseThrow();
    }

    /** The holder of the land of OUN-02 refused; the reserve OUN-02B lies on another parcel. */
    @ParameterizedTest
    @EnumSource(ClearBy.class)
    void aRefusalRemovesEveryCandidateOnThatParcelAndOnNoOther(ClearBy clearBy) {
        CandidateReport report = all(clearBy);

        assertThat(report.candidates()).hasSizeGreaterThan(100);
        assertThat(report.candidates())
                .allSatisfy(each -> assertThat(each.reach().line().intersects(parcel("L-OUN-02")))
                        .isFalse());
        assertThat(report.rejected().stream()
                        .flatMap(strip -> strip.reasons().stream())
                        .filter(reason -> reason.kind() == ReasonKind.LAND)
                        .map(Reason::sentence)
                        .distinct())
                .containsExactly("on the parcel L-OUN-02, consent refused, only land with consent");
        assertThat(advice("OUN-02").clear()).isFalse();
        assertThat(advice("OUN-02B").clear()).isTrue();
    }

    @Test
    void aSitesOwnReachIsNotInItsWayButThoseOfOthersAre() {
        assertThat(advice("BRN-01").clear()).isTrue();
        assertThat(all(ClearBy.ALONG).tally().shares())
                .extracting(LengthTally.Share::group)
                .contains("taken by a site's reach", "in tidal water", "within 50 m of a culvert");
    }

    @Test
    void theWayOutOfARefusedParcelLeavesItAndIsClear() {
        SiteAdvice advice = advice("OUN-02");

        assertThat(advice.inTheWay())
                .extracting(Reason::sentence)
                .containsExactly("on the parcel L-OUN-02, consent refused, only land with consent");
        assertThat(advice.moves()).hasSize(2);
        assertThat(advice.advice().get(0))
                .matches("move the start \\d+ m upstream: leaves the parcel L-OUN-02, consent refused");
        for (SiteAdvice.Move move : advice.moves()) {
            LineString there = ROUND.terrain().network().between("OUN", move.startM(), move.startM() - 150);
            assertThat(there.intersection(parcel("L-OUN-02")).getLength()).isLessThan(1e-6);
        }
    }

    @Test
    void candidatesKeepTheirDistanceFromBarriersAndFromTheReachesOfSites() {
        CandidateReport report = all(ClearBy.STRAIGHT);
        List<Reach> sites = new SiteReaches(ROUND).lay().value().orElseThrow();

        for (ProposedReach proposed : report.candidates()) {
            LineString line = proposed.reach().line();
            assertThat(line.getLength()).isEqualTo(150, within(1e-6));
            ROUND.terrain().barriers().forEach(barrier -> assertThat(line.distance(line.getFactory()
                            .createPoint(new org.locationtech.jts.geom.Coordinate(
                                    barrier.at().eastM(), barrier.at().northM()))))
                    .isGreaterThanOrEqualTo(50 - 1e-6));
            sites.stream()
                    .filter(site -> site.stream().equals(proposed.reach().stream()))
                    .forEach(site -> assertThat(Math.max(
                                    site.end().chainageM()
                                            - proposed.reach().start().chainageM(),
                                    proposed.reach().end().chainageM()
                                            - site.start().chainageM()))
                            .isGreaterThanOrEqualTo(150 - 1e-6));
        }
    }

    @Test
    void candidatesHaveStakesWithShortUniqueNamesFromTheirDownstreamEnd() {
        CandidateReport report = search(SearchRequest.all(SearchSettings.USUAL));

        assertThat(report.candidates()).hasSize(10);
        List<String> names = report.candidates().stream()
                .flatMap(each -> each.reach().stakes().stream())
                .map(Stake::name)
                .toList();
        assertThat(names).doesNotHaveDuplicates().hasSize(110).contains("C01-000", "C10-150");
        assertThat(names).allSatisfy(name -> assertThat(name).hasSizeLessThanOrEqualTo(10));
        assertThat(report.candidates())
                .allSatisfy(each -> assertThat(each.reach().start().chainageM())
                        .isGreaterThan(each.reach().end().chainageM()));
    }

    @Test
    void whatIsNotKnownIsSaidAndNeverCalledFine() {
        ProposedReach first =
                search(SearchRequest.all(SearchSettings.USUAL)).candidates().get(0);

        assertThat(first.land()).anyMatch(words -> words.contains("consent not checked"));
        assertThat(first.score().lowest()).isLessThanOrEqualTo(first.score().points());
        assertThat(first.score().highest()).isGreaterThanOrEqualTo(first.score().points());
    }

    @ParameterizedTest
    @ValueSource(strings = {"BRN", "OUN", "PEL"})
    void lengthsOfOneStreamAddUpToIt(String stream) {
        CandidateReport report =
                search(new SearchRequest(SearchSettings.USUAL, Optional.of(stream), Optional.empty(), true));
        double lengthM = ROUND.terrain().network().line(stream).orElseThrow().lengthM();

        assertThat(report.tally().totalM()).isEqualTo(lengthM, within(1e-6));
        assertThat(report.tally().usableM()
                        + report.rejected().stream()
                                .mapToDouble(RejectedStrip::lengthM)
                                .sum())
                .isEqualTo(lengthM, within(1e-6));
    }

    @Test
    void aStreamThatIsTidalThroughoutHoldsNoneAndTheAnswerSaysWhy() {
        CandidateReport report =
                search(new SearchRequest(SearchSettings.USUAL, Optional.of("PEL"), Optional.empty(), true));

        assertThat(report.candidates()).isEmpty();
        assertThat(report.complete()).isTrue();
        assertThat(report.tally().words()).isEqualTo("of 11.0 km: 11.0 km in tidal water, 0.0 km where a reach fits");
    }

    @Test
    void theSameRoundGivesTheSameReport() {
        assertThat(search(SearchRequest.all(SearchSettings.USUAL)).candidates().stream()
                        .map(ProposedReach::reach)
                        .map(Reach::start)
                        .toList())
                .isEqualTo(search(SearchRequest.all(SearchSettings.USUAL)).candidates().stream()
                        .map(ProposedReach::reach)
                        .map(Reach::start)
                        .toList());
    }

    @Test
    void pastStartsOfTheDemoRoundLieWithinTheirLimit() {
        List<Reach> reaches = new SiteReaches(ROUND).lay().value().orElseThrow();
        List<SitePastStart> starts = SitePastStart.of(ROUND, reaches);

        assertThat(starts).hasSizeGreaterThan(40);
        assertThat(SitePastStart.flagged(starts)).isEmpty();
        assertThat(starts).allSatisfy(start -> {
            double apartM = start.drift()
                    .at()
                    .distanceM(ROUND.site(start.site()).orElseThrow().start());
            assertThat(Math.hypot(start.drift().alongM(), start.drift().offM())).isEqualTo(apartM, within(1.0));
        });
    }
}
