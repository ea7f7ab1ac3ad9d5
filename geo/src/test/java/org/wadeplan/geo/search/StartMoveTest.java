package org.wadeplan.geo.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;

class StartMoveTest {

    private static final StreamGraph ONE = Streams.graph("BRN", "0 1000, 0 0");

    private static final StreamGraph TWO = Streams.graph("BRN", "0 1000, 0 400, 0 0", "TRB", "-400 400, 0 400");

    private static SearchGround footbridge(double chainageM) {
        return new SearchGround(
                ONE,
                List.of(new PlaceToClear(
                        ReasonKind.OBSTACLE,
                        "footbridge",
                        "FB",
                        ONE.lines().at(0, chainageM),
                        Optional.of(new LinePlace(0, chainageM)),
                        50)),
                List.of(),
                List.of(),
                CandidateFacts.UNKNOWN,
                LineTraits.NONE);
    }

    private static StartMove move(SearchGround ground, ClearBy clearBy, String line, double chainageM) {
        StreamGraph graph = ground.graph();
        return Rules.USUAL.clearing(50, clearBy).search(ground).move(Streams.place(graph, line, chainageM));
    }

    @ParameterizedTest
    @EnumSource(ClearBy.class)
    void saysHowFarAndWhichWayToClearWhatIsInTheWay(ClearBy clearBy) {
        // The start lies 5 m above the bridge and should lie 50 m above it.
        StartMove move = move(footbridge(600), clearBy, "BRN", 595);

        assertThat(move.inTheWay())
                .extracting(Reason::sentence)
                .containsExactly("5 m from the footbridge FB, at least 50 m " + clearBy.words());
        assertThat(move.advice())
                .containsExactly(
                        "move the start 45 m upstream: clears the footbridge FB by 50 m",
                        "move the start 205 m downstream: clears the footbridge FB by 50 m");
        assertThat(move.upstream().orElseThrow().to()).isEqualTo(new LinePlace(0, 550));
        assertThat(move.downstream().orElseThrow().to()).isEqualTo(new LinePlace(0, 800));
    }

    @Test
    void nothingIsInTheWayOfAReachExactlyAsFarOffAsAllowed() {
        assertThat(move(footbridge(600), ClearBy.ALONG, "BRN", 550).isClear()).isTrue();
        assertThat(move(footbridge(600), ClearBy.ALONG, "BRN", 550.001).advice())
                .containsExactly(
                        "move the start 1 m upstream: clears the footbridge FB by 50 m",
                        "move the start 250 m downstream: clears the footbridge FB by 50 m");
    }

    @Test
    void aReachThatReachesOverTheConfluenceIsToldHowMuchRoomThereIs() {
        // J2: 118 m from the confluence, 150 m do not fit.
        StartMove move = move(SearchGround.of(TWO), ClearBy.ALONG, "BRN", 718);

        assertThat(move.inTheWay())
                .extracting(Reason::sentence)
                .containsExactly(
                        "the start is 118 m below the confluence of BRN, TRB, a reach needs 150 m",
                        "0 m from the confluence of BRN, TRB, at least 50 m along the stream");
        assertThat(move.advice())
                .containsExactly("move the start 82 m downstream: clears the confluence of BRN, TRB by 50 m");
        assertThat(move.room())
                .isEqualTo("the stream is 400 m long between the confluence of BRN, TRB and the mouth of BRN; the start"
                        + " is 118 m below the first");
    }

    @Test
    void whereNoReachFitsItSaysWhyWithTheFigures() {
        StreamGraph tight =
                Streams.graph("BRN", "0 1000, 0 300, 0 150, 0 0", "T1", "-400 300, 0 300", "T2", "-400 150, 0 150");
        StartMove move = move(SearchGround.of(tight), ClearBy.ALONG, "BRN", 800);

        assertThat(move.upstream()).isEmpty();
        assertThat(move.downstream()).isEmpty();
        assertThat(move.advice())
                .containsExactly(
                        "no reach of 150 m fits here: the stream is 150 m long between the confluence of BRN, T1"
                                + " and the confluence of BRN, T2; the start is 100 m below the first");
    }

    @Test
    void namesEveryStretchPassedOnTheWayWithItsReasons() {
        StartMove move = move(footbridge(600), ClearBy.ALONG, "BRN", 595);

        assertThat(move.upstreamBlocked())
                .extracting(
                        each -> each.stretch().fromM() + "-" + each.stretch().toM())
                .containsExactly("550.0-600.0");
        assertThat(move.downstreamBlocked())
                .extracting(
                        each -> each.stretch().fromM() + "-" + each.stretch().toM())
                .containsExactly("550.0-600.0", "600.0-650.0");
    }

    @Test
    void movesLieWhereTheSearchItselfWouldLayAReach() {
        CandidateSearch search = Rules.USUAL.search(footbridge(600));
        for (double atM = 150; atM <= 1000; atM += 7.3) {
            StartMove move = search.move(new LinePlace(0, atM));
            for (Optional<StartMove.Shift> shift : List.of(move.upstream(), move.downstream())) {
                shift.ifPresent(
                        way -> assertThat(search.move(way.to()).isClear()).isTrue());
            }
            boolean hits = atM > 550 && atM - 150 < 650;
            assertThat(move.isClear()).isEqualTo(!hits);
        }
    }
}
