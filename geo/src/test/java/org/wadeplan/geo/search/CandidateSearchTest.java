package org.wadeplan.geo.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;

class CandidateSearchTest {

    /** Runs north to south for 1000 m; a tributary of 400 m joins at 600 m from the west. */
    private static final StreamGraph TWO = Streams.graph(
            "BRN", "0 1000, 0 400, 0 0",
            "TRB", "-400 400, 0 400");

    private static final StreamGraph ONE = Streams.graph("BRN", "0 1000, 0 0");

    private static SearchGround with(StreamGraph graph, PlaceToClear... places) {
        return new SearchGround(graph, List.of(places), List.of(), List.of(), CandidateFacts.UNKNOWN, LineTraits.NONE);
    }

    static PlaceToClear culvert(StreamGraph graph, String line, double chainageM, double clearM) {
        LinePlace on = Streams.place(graph, line, chainageM);
        return new PlaceToClear(
                ReasonKind.OBSTACLE,
                "culvert",
                "X1",
                graph.lines().at(on.line(), on.chainageM()),
                Optional.of(on),
                clearM);
    }

    private static Geometry area(String wkt) {
        try {
            return new WKTReader().read(wkt);
        } catch (ParseException wrong) {
            throw new AssertionError(wrong);
        }
    }

    static List<String> spans(CandidateSearch search, StreamGraph graph) {
        return search.rejected().stream()
                .map(each -> String.format(
                        java.util.Locale.ROOT,
                        "%s %.1f-%.1f: %s",
                        graph.lines().id(each.stretch().line()),
                        each.stretch().fromM(),
                        each.stretch().toM(),
                        String.join(
                                "; ",
                                each.reasons().stream().map(Reason::sentence).toList())))
                .toList();
    }

    @Test
    void everyRejectedStretchNamesWhatWasFoundAndWhatIsAllowed() {
        CandidateSearch search = Rules.USUAL.search(with(TWO, culvert(TWO, "BRN", 580, 50)));

        assertThat(spans(search, TWO))
                .containsExactly(
                        "BRN 530.0-550.0: 30 m from the culvert X1, at least 50 m along the stream",
                        "BRN 550.0-580.0: 20 m from the confluence of BRN, TRB, at least 50 m along the stream;"
                                + " 0 m from the culvert X1, at least 50 m along the stream",
                        "BRN 580.0-600.0: 0 m from the confluence of BRN, TRB, at least 50 m along the stream;"
                                + " 0 m from the culvert X1, at least 50 m along the stream",
                        "BRN 600.0-630.0: 0 m from the confluence of BRN, TRB, at least 50 m along the stream;"
                                + " 20 m from the culvert X1, at least 50 m along the stream",
                        "BRN 630.0-650.0: 30 m from the confluence of BRN, TRB, at least 50 m along the stream",
                        "TRB 350.0-370.0: 30 m from the confluence of BRN, TRB, at least 50 m along the stream",
                        "TRB 370.0-400.0: 0 m from the confluence of BRN, TRB, at least 50 m along the stream;"
                                + " 20 m from the culvert X1, at least 50 m along the stream");
    }

    @ParameterizedTest
    @CsvSource({"STRAIGHT", "ALONG"})
    void lengthsAddUpAndCountAStretchWithTwoReasonsOnceAsFirst(ClearBy clearBy) {
        LengthTally tally = Rules.USUAL
                .clearing(50, clearBy)
                .search(with(TWO, culvert(TWO, "BRN", 580, 50)))
                .result()
                .tally();

        assertThat(tally.totalM()).isEqualTo(1400, within(1e-9));
        assertThat(tally.usableM()
                        + tally.shares().stream()
                                .mapToDouble(LengthTally.Share::firstM)
                                .sum())
                .isEqualTo(1400, within(1e-6));
        assertThat(tally.shares())
                .extracting(LengthTally.Share::group)
                .containsExactly("within 50 m of a confluence", "within 50 m of a culvert");
        assertThat(tally.shares().get(0).firstM()).isEqualTo(150, within(1e-6));
        assertThat(tally.shares().get(0).anyM()).isEqualTo(150, within(1e-6));
        assertThat(tally.shares().get(1).firstM()).isEqualTo(20, within(1e-6));
    }

    @Test
    void aReachExactlyAsFarAsAllowedFitsAndOneMillimetreNearerDoesNot() {
        // 150 m are left between the culvert's 50 m and the source: exactly one reach.
        assertThat(Rules.USUAL.search(with(ONE, culvert(ONE, "BRN", 200, 50))).rejected())
                .extracting(each -> each.stretch().fromM())
                .doesNotContain(0.0);
        CandidateSearch nearer = Rules.USUAL.search(with(ONE, culvert(ONE, "BRN", 199.999, 50)));
        assertThat(spans(nearer, ONE).get(0)).isEqualTo("BRN 0.0-150.0: 149 m are left here, a reach needs 150 m");
        assertThat(nearer.result().tally().shares().get(1).group()).isEqualTo("in what is left shorter than a reach");
    }

    @Test
    void straightAlsoKeepsClearOfPlacesOnANeighbouringStream() {
        StreamGraph beside = Streams.graph("A", "0 1000, 0 0", "B", "30 1000, 30 0");
        PlaceToClear weir = new PlaceToClear(
                ReasonKind.OBSTACLE,
                "weir",
                "W",
                new MetricPoint(30, 500),
                Optional.of(Streams.place(beside, "B", 500)),
                50);

        SearchResult straight = Rules.USUAL
                .clearing(50, ClearBy.STRAIGHT)
                .search(with(beside, weir))
                .result();

        assertThat(straight.counts())
                .extracting(FitCount::clearBy, FitCount::ruledOutM)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(ClearBy.STRAIGHT, 180.0),
                        org.assertj.core.groups.Tuple.tuple(ClearBy.ALONG, 100.0));
    }

    @Test
    void alongKeepsClearThroughAConfluence() {
        // 30 m up from the confluence on the main stream; 50 m reach 20 m into the tributary.
        CandidateSearch search = Rules.USUAL.clearing(0, ClearBy.ALONG).search(with(TWO, culvert(TWO, "BRN", 570, 50)));

        assertThat(spans(search, TWO))
                .containsExactly(
                        "BRN 520.0-570.0: 0 m from the culvert X1, at least 50 m along the stream",
                        "BRN 570.0-600.0: 0 m from the culvert X1, at least 50 m along the stream",
                        "BRN 600.0-620.0: 30 m from the culvert X1, at least 50 m along the stream",
                        "TRB 380.0-400.0: 30 m from the culvert X1, at least 50 m along the stream");
    }

    @Test
    void aPlaceOnNoLineCountsOnlyStraight() {
        PlaceToClear apart =
                new PlaceToClear(ReasonKind.OBSTACLE, "ford", "F", new MetricPoint(30, 500), Optional.empty(), 50);
        SearchResult result = Rules.USUAL.search(with(ONE, apart)).result();

        assertThat(result.counts()).extracting(FitCount::ruledOutM).containsExactly(80.0, 0.0);
    }

    @Test
    void staysOffLandWithoutConsentExactlyToItsOutline() {
        SearchGround ground = new SearchGround(
                ONE,
                List.of(),
                List.of(new LandToClear(
                        "L1", "consent refused", area("POLYGON ((-5 600, 5 600, 5 400, -5 400, -5 600))"), 0)),
                List.of(),
                CandidateFacts.UNKNOWN,
                LineTraits.NONE);

        assertThat(spans(Rules.USUAL.search(ground), ONE))
                .containsExactly("BRN 400.0-600.0: on the parcel L1, consent refused, only land with consent");
    }

    @Test
    void keepsADistanceToLandWhereOneIsSet() {
        SearchGround ground = new SearchGround(
                ONE,
                List.of(),
                List.of(new LandToClear(
                        "L1", "consent refused", area("POLYGON ((-5 600, 5 600, 5 400, -5 400, -5 600))"), 20)),
                List.of(),
                CandidateFacts.UNKNOWN,
                LineTraits.NONE);

        assertThat(Rules.USUAL.search(ground).result().tally().usableM()).isEqualTo(1000 - 240, within(0.1));
    }

    @Test
    void aReachThatIsThereAlreadyKeepsItsGapAlongTheNetworkNotAcrossTheGround() {
        // A hairpin: its two limbs run 20 m apart, and the way round is long.
        StreamGraph hairpin = Streams.graph("H", "0 0, 0 1000, 20 1000, 20 0");
        SearchGround ground = new SearchGround(
                hairpin,
                List.of(),
                List.of(),
                List.of(new StretchToClear(
                        ReasonKind.TAKEN,
                        "taken by a site's reach",
                        "the reach of S1",
                        new LineStretch(0, 400, 550),
                        100)),
                CandidateFacts.UNKNOWN,
                LineTraits.NONE);

        assertThat(Rules.USUAL.search(ground).result().tally().shares())
                .extracting(LengthTally.Share::anyM)
                .containsExactly(350.0);
    }

    @Test
    void proposedReachesKeepTheirGapThroughConfluences() {
        List<Candidate> chosen = Rules.USUAL
                .clearing(0, ClearBy.ALONG)
                .gap(200)
                .search(SearchGround.of(TWO))
                .result()
                .candidates();

        assertThat(chosen).isNotEmpty();
        List<double[]> fromConfluence = new ArrayList<>();
        for (Candidate candidate : chosen) {
            LineStretch stretch = candidate.stretches().get(0);
            boolean main = TWO.lines().id(stretch.line()).equals("BRN");
            fromConfluence.add(
                    main
                            ? new double[] {stretch.fromM() - 600, stretch.toM() - 600}
                            : new double[] {400 - stretch.toM(), 400 - stretch.fromM(), 1});
        }
        for (double[] a : fromConfluence) {
            for (double[] b : fromConfluence) {
                boolean sameArm = a.length == b.length && Math.signum(a[0] + a[1]) == Math.signum(b[0] + b[1]);
                double apartM = sameArm
                        ? Math.max(a[0], b[0]) - Math.min(a[1], b[1])
                        : Math.min(Math.abs(a[0]), Math.abs(a[1])) + Math.min(Math.abs(b[0]), Math.abs(b[1]));
                assertThat(a == b || apartM >= 200 - 1e-6).isTrue();
            }
        }
    }

    @Test
    void aReachRunsOnWhereOneLineEndsAndOneOtherGoesOnUnlessForbidden() {
        StreamGraph pieces = Streams.graph("A1", "0 300, 0 200", "A2", "0 200, 0 100", "A3", "0 100, 0 0");

        SearchResult across = Rules.USUAL.search(SearchGround.of(pieces)).result();
        SearchResult within = Rules.USUAL
                .laid(new SearchRules.Fitted(25), false)
                .search(SearchGround.of(pieces))
                .result();

        assertThat(across.candidates()).hasSize(2);
        Candidate lowest = across.candidates().stream()
                .filter(each -> pieces.lines().id(each.start().line()).equals("A3"))
                .findFirst()
                .orElseThrow();
        assertThat(lowest.stretches()).hasSize(2);
        assertThat(lowest.line(pieces.lines()).toText()).isEqualTo("LINESTRING (0 0, 0 100, 0 150)");
        assertThat(within.candidates()).isEmpty();
        assertThat(within.tally().shares())
                .containsExactly(
                        new LengthTally.Share(ReasonKind.TOO_SHORT, "in what is left shorter than a reach", 300, 300));
    }

    @Test
    void keepsClearOfSourcesAndMouthsWhereAsked() {
        assertThat(spans(Rules.USUAL.lineEnds(30).search(SearchGround.of(ONE)), ONE))
                .containsExactly(
                        "BRN 0.0-30.0: 0 m from the source of BRN, at least 30 m along the stream",
                        "BRN 970.0-1000.0: 0 m from the mouth of BRN, at least 30 m along the stream");
    }

    @Test
    void aSearchOfOneLineSumsThatLineAlone() {
        assertThat(Rules.USUAL
                        .only("TRB")
                        .search(SearchGround.of(TWO))
                        .result()
                        .tally()
                        .totalM())
                .isEqualTo(400);
    }

    @Test
    void aCancelledSearchSaysSoAndProposesNothing() {
        SearchWatch impatient = new SearchWatch() {
            @Override
            public void report(String step, int done, int of) {}

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        SearchResult result = new CandidateSearch(SearchGround.of(ONE), Rules.USUAL.rules(), impatient).result();

        assertThat(result.complete()).isFalse();
        assertThat(result.candidates()).isEmpty();
    }
}
