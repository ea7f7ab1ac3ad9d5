package org.wadeplan.geo.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.terrain.Slope;

/** Limits, scores, and which candidates are taken. */
class CandidateChoiceTest {

    private static final StreamGraph TWO = Streams.graph(
            "BRN", "0 1000, 0 400, 0 0",
            "TRB", "-400 400, 0 400");

    private static final StreamGraph ONE = Streams.graph("BRN", "0 1000, 0 0");

    @Test
    void limitsRuleOutWithTheFigureFoundAndUnknownFiguresRuleOutNothingAndAreNamed() {
        CandidateFacts facts = new CandidateFacts() {
            @Override
            public OptionalInt order(LineStretch stretch) {
                return TWO.lines().id(stretch.line()).equals("TRB") ? OptionalInt.of(1) : OptionalInt.of(2);
            }

            @Override
            public Optional<MeanWidth> width(LineStretch stretch) {
                return Optional.empty();
            }

            @Override
            public Optional<Slope> slope(LineStretch stretch) {
                return Optional.of(
                        stretch.toM() > 300
                                ? new Slope.Fitted(1, 500)
                                : new Slope.Unresolved("the grid is too coarse"));
            }

            @Override
            public Optional<WalkIn> walkIn(LineStretch stretch) {
                return Optional.of(new WalkIn(
                        "track",
                        new MetricPoint(0, 0),
                        new MetricPoint(0, 0),
                        stretch.toM() > 800 ? 900 : 100,
                        OptionalDouble.empty(),
                        List.of()));
            }
        };
        SearchGround ground = new SearchGround(TWO, List.of(), List.of(), List.of(), facts, LineTraits.NONE);
        SearchLimits limits = new SearchLimits(
                Bounds.atLeast(2), Bounds.between(1, 5), Bounds.atMost(3), Bounds.atMost(500), false, Set.of());
        CandidateSearch search =
                Rules.USUAL.clearing(0, ClearBy.ALONG).limited(limits).search(ground);

        assertThat(CandidateSearchTest.spans(search, TWO).get(0))
                .startsWith("BRN 800.0-850.0: walk-in 900.0 m, at most 500 m");
        assertThat(CandidateSearchTest.spans(search, TWO)).contains("TRB 0.0-400.0: stream order 1, at least 2");
        assertThat(search.result().notChecked())
                .containsExactly(
                        "not checked everywhere: slope, where the elevation grid cannot resolve it",
                        "not checked everywhere: width, where no width is known");
        assertThat(search.result().candidates())
                .allSatisfy(each -> assertThat(each.notChecked()).contains("not checked: width, 1 to 5 m"));
    }

    @Test
    void linesThatAreNoStreamsAreRuledOutByTheirKindInAnyCase() {
        LineTraits traits = new LineTraits() {
            @Override
            public Optional<String> kind(int line) {
                return Optional.of(TWO.lines().id(line).equals("TRB") ? "Lake" : "stream");
            }
        };
        SearchGround ground = new SearchGround(TWO, List.of(), List.of(), List.of(), CandidateFacts.UNKNOWN, traits);
        SearchLimits limits =
                new SearchLimits(Bounds.NONE, Bounds.NONE, Bounds.NONE, Bounds.NONE, false, Set.of("lake", "pipe"));

        assertThat(Rules.USUAL
                        .limited(limits)
                        .search(ground)
                        .result()
                        .tally()
                        .shares()
                        .get(0))
                .isEqualTo(new LengthTally.Share(ReasonKind.LINE_KIND, "on a line that is Lake", 400, 400));
    }

    @Test
    void anUnknownPartOfAScoreCountsHalfAndItsRangeIsSaid() {
        Score score = Rules.USUAL
                .search(SearchGround.of(ONE))
                .result()
                .candidates()
                .get(0)
                .score();

        assertThat(score.points()).isEqualTo(65);
        assertThat(score.lowest()).isEqualTo(30);
        assertThat(score.highest()).isEqualTo(100);
        assertThat(score.parts())
                .extracting(Score.Part::name)
                .containsExactly("nearest obstacle", "length certainty", "width", "slope", "walk-in");
    }

    @Test
    void tiesGoByLineThenByChainage() {
        StreamGraph beside = Streams.graph("B", "0 1000, 0 0", "A", "500 1000, 500 0");
        List<String> chosen = Rules.USUAL.best(3).search(SearchGround.of(beside)).result().candidates().stream()
                .map(each -> beside.lines().id(each.start().line()) + " "
                        + each.start().chainageM())
                .toList();

        assertThat(chosen).containsExactly("A 150.0", "A 300.0", "A 450.0");
    }

    @Test
    void noGroupGetsMoreThanItsShare() {
        StreamGraph beside = Streams.graph("B", "0 1000, 0 0", "A", "500 1000, 500 0");
        LineTraits traits = new LineTraits() {
            @Override
            public String group(LinePlace place) {
                return beside.lines().id(place.line());
            }
        };
        SearchGround ground = new SearchGround(beside, List.of(), List.of(), List.of(), CandidateFacts.UNKNOWN, traits);

        assertThat(Rules.USUAL.ofEachGroup(2).search(ground).result().candidates().stream()
                        .map(each -> beside.lines().id(each.start().line()))
                        .toList())
                .containsExactly("A", "A", "B", "B");
    }

    @Test
    void slopeAndAccessAreAskedForOnlyNearTheTop() {
        int[] asked = new int[1];
        CandidateFacts facts = new CandidateFacts() {
            @Override
            public boolean knowsSlopes() {
                return false;
            }

            @Override
            public Optional<WalkIn> walkIn(LineStretch stretch) {
                asked[0]++;
                return Optional.of(new WalkIn(
                        "track", new MetricPoint(0, 0), new MetricPoint(0, 0), 50, OptionalDouble.empty(), List.of()));
            }
        };
        StreamGraph graph = Streams.graph("LONG", "0 100000, 0 0");
        PlaceToClear low = CandidateSearchTest.culvert(graph, "LONG", 50_000, 50);
        SearchGround ground = new SearchGround(graph, List.of(low), List.of(), List.of(), facts, LineTraits.NONE);

        SearchResult result = Rules.USUAL.best(1).search(ground).result();

        assertThat(result.startsTried()).isGreaterThan(3000);
        assertThat(asked[0]).isLessThan(10);
        assertThat(result.candidates().get(0).score().points()).isEqualTo(77.5);
    }
}
