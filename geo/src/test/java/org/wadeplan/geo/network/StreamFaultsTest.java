package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;

/** Every fault between lines: its exact message, its repair once accepted, and nothing left to offer after that. */
class StreamFaultsTest extends DrawnStreams {

    @Test
    void aLooseEndThatStopsShortOfAStreamIsOfferedToBeJoined() {
        line("MAIN", DOWN, "LINESTRING (0 0, 200 0)");
        line("TRIB", DOWN, "LINESTRING (100 90, 100 3.5)");

        assertThat(found(read()))
                .containsExactly("WARNING stream-near-miss feature 2 (TRIB): its last vertex meets no line and lies"
                        + " 3.5 m from MAIN near 500100, 5100004" + SLIP + "the two are joined by a straight line");
        assertThat(read().value().orElseThrow().graph().pieceCount()).isEqualTo(2);

        Checked<StreamNetwork> joined = read("join-end:TRIB");
        assertThat(found(joined))
                .containsExactly("NOTE stream-near-miss-repaired feature 2 (TRIB): its last vertex meets no line and"
                        + " lies 3.5 m from MAIN near 500100, 5100004; the two are joined by a straight line, as accepted"
                        + " by join-end:TRIB");
        assertThat(drawn(joined, "TRIB")).isEqualTo("LINESTRING (100 90, 100 3.5, 100 0)");
        assertThat(joined.value().orElseThrow().graph().pieceCount()).isEqualTo(3);
    }

    @Test
    void aGapBetweenTwoLooseEndsIsToldOnce() {
        line("A", DOWN, "LINESTRING (0 0, 100 0)").line("B", DOWN, "LINESTRING (104 0, 200 0)");

        assertThat(offered(read())).containsExactly("join-end:A");
        assertThat(read("join-end:A").value().orElseThrow().graph().nodeCount()).isEqualTo(3);
        assertThat(offered(read("join-end:A"))).isEmpty();
    }

    @Test
    void gapsWiderThanTheLimitAndStubsAreNoGaps() {
        line("MAIN", DOWN, "LINESTRING (0 0, 50 0, 200 0)");
        line("FAR", DOWN, "LINESTRING (100 90, 100 10.01)");
        line("STUB", DOWN, "LINESTRING (50 8, 50 0)");

        assertThat(found(read()))
                .containsExactly("NOTE stream-isolated feature 2 (FAR): the line meets no other: it begins near 500100,"
                        + " 5100090 and is 80 m long");
    }

    @Test
    void aLineThatIsDrawnTwiceIsOfferedToBeDropped() {
        line("A", DOWN, "LINESTRING (0 0, 100 0, 200 50)");
        line("B", DOWN, "LINESTRING (0 0, 100 0, 200 50)");
        line("C", DOWN, "LINESTRING (200 50, 100 0, 0 0)");

        assertThat(found(read()))
                .contains(
                        "ERROR stream-duplicate feature 2 (B): the line is drawn twice: it has the shape of feature 1"
                                + " (A), 212 m long" + SLIP + "this feature is left out",
                        "ERROR stream-duplicate feature 3 (C): the line is drawn twice: it has the shape of feature 1"
                                + " (A), in the other direction, 212 m long" + SLIP + "this feature is left out");
        assertThat(read("drop-duplicate:2", "drop-duplicate:3")
                        .value()
                        .orElseThrow()
                        .lines())
                .extracting(StreamLine::code)
                .containsExactly("A");
    }

    @Test
    void aPartOfAStreamThatIsDrawnTwiceIsNotJoinedToItself() {
        line("A", DOWN, "LINESTRING (0 0, 100 0)").line("A", DOWN, "LINESTRING (0 0, 100 0)");

        assertThat(found(read())).hasSize(1);
        assertThat(drawn(read(), "A")).isEqualTo("LINESTRING (0 0, 100 0)");
        assertThat(read("drop-duplicate:*").hasErrors()).isFalse();
    }

    @Test
    void shapesThatAreNoLineMayBeLeftOut() {
        line("A", DOWN, "LINESTRING (0 0, 100 0)");
        line("NULL", DOWN, "-");
        line("ZERO", DOWN, "LINESTRING (5 5, 5 5)");

        assertThat(read().problems())
                .extracting(Problem::sentence)
                .containsExactly(
                        "s.gpkg, feature 2 (NULL): there is no line, the shape is empty. Allowed: a line."
                                + " Do: correct this feature in the map file, or go on without it by --accept leave-out:2",
                        "s.gpkg, feature 3 (ZERO): the line has no length. Allowed: a line longer than 0 m."
                                + " Do: correct this feature in the map file, or go on without it by --accept leave-out:3");
        assertThat(found(read("leave-out:2", "leave-out:3")))
                .containsExactly(
                        "NOTE stream-left-out feature 2 (NULL): there is no line, the shape is empty; left out, as"
                                + " accepted by leave-out:2",
                        "NOTE stream-left-out feature 3 (ZERO): the line has no length; left out, as accepted by"
                                + " leave-out:3");
    }

    @Test
    void partsThatFollowEachOtherAreOneLine() {
        line("A", DOWN, "MULTILINESTRING ((0 0, 100 0), (100 0, 200 0))");

        assertThat(found(read())).isEmpty();
        assertThat(drawn(read(), "A")).isEqualTo("LINESTRING (0 0, 100 0, 200 0)");
    }

    @Test
    void linesThatCrossWithoutAVertexInCommonAreNotedWithThePlace() {
        line("CANAL", DOWN, "LINESTRING (0 50, 200 50)").line("STREAM", DOWN, "LINESTRING (100 90, 100 10)");

        assertThat(found(read()))
                .containsExactly(
                        "NOTE stream-crossing feature 1 (CANAL): it crosses STREAM near 500100, 5100050 without a"
                                + " vertex in common: taken as one over the other, not as a junction");
    }

    @Test
    void aLineThatStandsAloneIsNotedWhereMostOthersHangTogether() {
        line("A", DOWN, "LINESTRING (0 0, 100 0)").line("B", DOWN, "LINESTRING (100 0, 200 0)");
        line("ALONE", DOWN, "LINESTRING (0 500, 100 500)");

        assertThat(found(read()))
                .containsExactly(
                        "NOTE stream-isolated feature 3 (ALONE): the line meets no other: it begins near 500000,"
                                + " 5100500 and is 100 m long");
    }

    @Test
    void ordersThatStandForNoOrderAreNeverRead() {
        line("COAST", DOWN, "LINESTRING (0 0, 100 0)");
        features.set(0, with(with(features.get(0), "StreamOrde", "-9"), "StreamCalc", "-9999"));

        assertThat(read().value().orElseThrow().orders()).containsExactly(new OrderedPiece("COAST", 0, 100, 1));
    }

    private static Feature with(Feature feature, String column, String value) {
        Map<String, Attribute> attributes = new LinkedHashMap<>(feature.attributes());
        attributes.put(column, Attribute.of(value));
        return new Feature(feature.id(), feature.geometry(), attributes);
    }

    @Test
    void afterAllRepairsReadingTheMendedLinesOffersNone() {
        line("MAIN", DOWN, "LINESTRING (0 0, 100 0, 200 0)").line("TRIB", DOWN, "LINESTRING (100 90, 100 3)");
        line("BACK", DOWN, "LINESTRING (300 0, 200 0)").line("ON", DOWN, "LINESTRING (300 0, 400 0)");
        line("TWIN", DOWN, "LINESTRING (300 0, 400 0)").line("T3", DOWN, "LINESTRING (300 90, 300 0)");
        line("SPIKE", DOWN, "LINESTRING (400 0, 420 0, 430 90, 425 1, 500 0)");
        List<String> accepted = new ArrayList<>();
        for (List<String> more = offered(read());
                !more.isEmpty();
                more = offered(read(accepted.toArray(String[]::new)))) {
            accepted.addAll(more);
        }
        StreamNetwork mended = read(accepted.toArray(String[]::new)).value().orElseThrow();
        features.clear();
        mended.lines().forEach(this::again);

        assertThat(accepted)
                .containsExactlyInAnyOrder("join-end:TRIB", "reverse:BACK", "drop-duplicate:5", "drop-spike:SPIKE");
        assertThat(offered(read())).isEmpty();
    }

    private void again(StreamLine stream) {
        line(
                stream.code(),
                DOWN,
                AffineTransformation.translationInstance(-500000, -5100000)
                        .transform(stream.line())
                        .toText());
    }

    @Test
    void repairsOfOneKindMayBeAcceptedTogether() {
        AcceptedRepairs all = AcceptedRepairs.of("Join-End:*");

        assertThat(Stream.of("join-end:A", "JOIN-END:b", "join-start:A").filter(all::accepts))
                .containsExactly("join-end:A", "JOIN-END:b");
        assertThat(all.notAmong(java.util.Set.of("join-end:A"))).isEmpty();
        assertThat(all.notAmong(java.util.Set.of("join-start:A"))).containsExactly("join-end:*");
    }
}
