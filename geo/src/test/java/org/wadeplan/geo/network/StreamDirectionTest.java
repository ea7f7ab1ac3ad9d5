package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;

/** Which way the water runs: what is asked, by what it is told, and that nothing is turned without consent. */
class StreamDirectionTest extends DrawnStreams {

    @Test
    void aLineThatAlonePreventsTheWaterFromLeadingOnIsOfferedToBeTurned() {
        line("T1", DOWN, "LINESTRING (0 100, 100 0)").line("T2", DOWN, "LINESTRING (0 -100, 100 0)");
        line("BACK", DOWN, "LINESTRING (200 0, 100 0)");
        line("ON", DOWN, "LINESTRING (200 0, 300 0)").line("T3", DOWN, "LINESTRING (200 90, 200 0)");

        assertThat(found(read()))
                .containsExactly("WARNING stream-against-neighbours feature 3 (BACK): all lines at 500100, 5100000 end"
                        + " there and none leads on; of them this one alone could (if it is right as drawn, say --accept"
                        + " as-drawn:BACK)" + SLIP + "it is turned round");
        assertThat(drawn(read(), "BACK")).isEqualTo("LINESTRING (200 0, 100 0)");
        assertThat(drawn(read("reverse:BACK"), "BACK")).isEqualTo("LINESTRING (100 0, 200 0)");
        assertThat(offered(read("reverse:BACK"))).isEmpty();
        assertThat(found(read("as-drawn:BACK")))
                .containsExactly(
                        "WARNING stream-sink feature 3 (BACK): all lines at 500100, 5100000 end there and none leads on:"
                                + " BACK, T1, T2",
                        "NOTE stream-flow feature 3 (BACK): taken as drawn, first vertex at the source, as accepted by"
                                + " as-drawn:BACK");
    }

    @Test
    void aLineThatBothItsNeighboursContradictSaysSo() {
        line("A", DOWN, "LINESTRING (0 0, 100 0)").line("B", DOWN, "LINESTRING (200 0, 100 0)");
        line("C", DOWN, "LINESTRING (200 0, 300 0)");

        assertThat(found(read()))
                .containsExactly(
                        "WARNING stream-against-neighbours feature 2 (B): it runs against its neighbours at both"
                                + " ends: all lines leave 500200, 5100000 and all end at 500100, 5100000 (if it is right as"
                                + " drawn, say --accept as-drawn:B)" + SLIP + "it is turned round");
    }

    @Test
    void waterThatCannotLeaveIsASinkUntilSomebodySaysWhichLineLeadsOn() {
        line("A", DOWN, "LINESTRING (0 100, 100 0)").line("B", DOWN, "LINESTRING (0 -100, 100 0)");
        line("C", DOWN, "LINESTRING (200 0, 100 0)");

        assertThat(found(read()))
                .containsExactly(
                        "WARNING stream-sink feature 1 (A): all lines at 500100, 5100000 end there and none leads"
                                + " on: A, B, C");
        assertThat(drawn(read("reverse:C"), "C")).isEqualTo("LINESTRING (100 0, 200 0)");
    }

    @Test
    void aTributaryDrawnAwayFromItsStreamIsOfferedToBeTurned() {
        line("MAIN", DOWN, "LINESTRING (0 0, 100 0)").line("ON", DOWN, "LINESTRING (100 0, 200 0)");
        line("TRIB", DOWN, "LINESTRING (100 0, 100 80)").line("MOUTH", DOWN, "LINESTRING (200 0, 300 0)");

        assertThat(found(read()))
                .containsExactly(
                        "WARNING stream-against-neighbours feature 3 (TRIB): it leaves 500100, 5100000 beside another"
                                + " line and ends at 500100, 5100080 without a mouth, as a tributary drawn the wrong way does (if"
                                + " it is right as drawn, say --accept as-drawn:TRIB)" + SLIP + "it is turned round");
    }

    @Test
    void whereTwoLinesEndBesideEachOtherOnlyTheGroundTellsTheTributary() {
        line("MAIN", DOWN, "LINESTRING (0 0, 100 0)").line("ON", DOWN, "LINESTRING (100 0, 200 0)");
        line("TRIB", DOWN, "LINESTRING (100 0, 50 80)");

        assertThat(found(read())).isEmpty();
        slopingEast();
        assertThat(offered(read())).containsExactly("reverse:TRIB");
    }

    @Test
    void waterInACircleIsReportedWithItsLines() {
        line("IN", DOWN, "LINESTRING (-100 0, 0 0)").line("A", DOWN, "LINESTRING (0 0, 100 0)");
        line("B", DOWN, "LINESTRING (100 0, 50 80)").line("C", DOWN, "LINESTRING (50 80, 0 0)");
        line("OUT", DOWN, "LINESTRING (100 0, 200 0)");

        assertThat(found(read()))
                .containsExactly(
                        "WARNING stream-circle feature 2 (A): the water would run in a circle through 500000, 5100000: A,"
                                + " B, C",
                        "NOTE stream-braided feature 2 (A): among 5 connected lines the water parts and meets again once,"
                                + " for the first time near 500100, 5100000");
    }

    @Test
    void twoLinesThatSendTheWaterBackAndForthAreACircle() {
        line("A", DOWN, "LINESTRING (0 0, 50 40, 100 0)").line("B", DOWN, "LINESTRING (100 0, 50 -40, 0 0)");

        assertThat(found(read()))
                .contains(
                        "WARNING stream-circle feature 1 (A): the water would run in a circle through 500000, 5100000:"
                                + " A, B");
    }

    @Test
    void theGroundTellsTheDirectionOfLinesThatHangTogether() {
        slopingEast();
        line("A", "-", "LINESTRING (0 100, 100 0)").line("B", "-", "LINESTRING (0 -100, 100 0)");
        line("C", "-", "LINESTRING (100 0, 105 0)");

        assertThat(found(read()))
                .containsExactly("NOTE stream-flow feature 1 (A): A, B, C drawn source to mouth, because of 3 connected"
                        + " lines 2 as drawn fall by 18 m, 0 rise by 0 m, 1 is flat on the elevation grid");
    }

    @Test
    void linesThatTheGroundContradictsAreTurnedTogetherAndOnlyWithConsent() {
        slopingEast();
        line("A", "-", "LINESTRING (100 0, 0 100)").line("B", "-", "LINESTRING (100 0, 0 -100)");
        line("C", "-", "LINESTRING (200 0, 100 0)");

        assertThat(found(read()))
                .first()
                .isEqualTo(
                        "ERROR stream-reversed feature 1 (A): A, B, C run from mouth to source: of 3 connected lines 0"
                                + " as drawn fall by 0 m, 3 rise by 27 m, 0 are flat on the elevation grid (if right as drawn,"
                                + " say --accept as-drawn-all:A)" + SLIP + "they are turned round, all of them");
        assertThat(drawn(read("reverse-all:A"), "C")).isEqualTo("LINESTRING (100 0, 200 0)");
        assertThat(offered(read("reverse-all:A"))).isEmpty();
        assertThat(drawn(read("as-drawn-all:A"), "C")).isEqualTo("LINESTRING (200 0, 100 0)");
    }

    @Test
    void linesThatAreSaidToRunUphillAreDoubted() {
        slopingEast();
        line("A", DOWN, "LINESTRING (100 0, 0 0)");

        assertThat(found(read()))
                .containsExactly("WARNING stream-flow-uphill feature 1 (A): A seems to run uphill: of 1 line 0 as drawn"
                        + " fall by 0 m, 1 rises by 9 m, 0 are flat on the elevation grid (if that is right, say --accept"
                        + " as-drawn:A)" + SLIP + "it is turned round");
        assertThat(drawn(read("reverse:A"), "A")).isEqualTo("LINESTRING (0 0, 100 0)");
        assertThat(read("as-drawn:A").problems())
                .noneMatch(problem -> problem.code().equals("stream-flow-uphill"));
    }

    @Test
    void connectedLinesThatAreSaidToRunUphillAreDoubtedTogether() {
        slopingEast();
        line("A", DOWN, "LINESTRING (100 0, 50 0)").line("B", DOWN, "LINESTRING (50 0, 0 0)");

        assertThat(offered(read())).containsExactly("reverse-all:A");
        assertThat(drawn(read("reverse-all:A"), "B")).isEqualTo("LINESTRING (0 0, 50 0)");
        assertThat(offered(read("as-drawn-all:A"))).isEmpty();
    }

    @Test
    void withoutAGridTheQuestionIsAskedOnceForLinesThatHangTogether() {
        line("A", "-", "LINESTRING (0 0, 100 0)").line("B", "-", "LINESTRING (100 0, 200 0)");

        assertThat(read().problems())
                .extracting(Problem::sentence)
                .containsExactly(
                        "s.gpkg, feature 1 (A), column flow: nothing tells which way the water runs along 2 lines"
                                + " that hang together: A, B. Allowed: source-to-mouth or mouth-to-source in column flow, or an"
                                + " elevation grid. Do: answer for all of them with --accept as-drawn-all:A or --accept"
                                + " reverse-all:A, or for each with as-drawn: or reverse: and its code");
        assertThat(read("as-drawn-all:*").hasErrors()).isFalse();
        assertThat(drawn(read("reverse-all:A"), "A")).isEqualTo("LINESTRING (100 0, 0 0)");
    }
}
