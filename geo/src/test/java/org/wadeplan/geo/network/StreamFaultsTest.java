package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Every fault between lines: its exact message, its repair once accepted, and nothing left to offer after that. */
class StreamFaultsTest {

    private static final SourcePlace FILE = SourcePlace.file("s.gpkg");
    private static final CoordinateSystem UTM27 =
            CoordinateSystem.named("EPSG:32627", FILE).value().orElseThrow();
    private static final String DOWN = "source-to-mouth";

    private final List<Feature> features = new ArrayList<>();
    private StreamRules rules = StreamRules.USUAL;

    /** Coordinates are metres from 500000, 5100000; a dash stands for no flow column. */
    private StreamFaultsTest line(String code, String flow, String wkt) {
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        attributes.put("code", Attribute.of(code));
        attributes.put("name", Attribute.of(code));
        attributes.put("catchment", Attribute.of("C"));
        if (!flow.equals("-")) {
            attributes.put("flow", Attribute.of(flow));
        }
        features.add(new Feature(Integer.toString(features.size() + 1), shape(wkt), attributes));
        return this;
    }

    private static Optional<Geometry> shape(String wkt) {
        try {
            return wkt.equals("-")
                    ? Optional.empty()
                    : Optional.of(AffineTransformation.translationInstance(500000, 5100000)
                            .transform(new WKTReader().read(wkt)));
        } catch (ParseException wrong) {
            throw new AssertionError(wrong);
        }
    }

    private Checked<StreamNetwork> read(String... accepted) {
        LayerShape shape = new LayerShape(
                "s", Optional.of(StatedSystem.code("EPSG:32627")), LayerShape.Kind.LINESTRING, List.of());
        return new StreamReader(UTM27, FILE, StreamHints.NONE, AcceptedRepairs.of(accepted), rules)
                .read(new FeatureLayer(shape, features));
    }

    private static List<String> found(Checked<StreamNetwork> answer) {
        return answer.problems().stream()
                .map(problem -> problem.severity() + " " + problem.code() + " "
                        + problem.place().row().orElse("") + ": " + problem.found())
                .toList();
    }

    private static String drawn(Checked<StreamNetwork> answer, String code) {
        return AffineTransformation.translationInstance(-500000, -5100000)
                .transform(answer.value().orElseThrow().line(code).orElseThrow().line())
                .toText();
    }

    /** What a reading offers as {@code --accept} in its remedies. */
    private static List<String> offered(Checked<StreamNetwork> answer) {
        return answer.problems().stream()
                .map(Problem::remedy)
                .filter(remedy -> remedy.contains("accept the repair with --accept "))
                .map(remedy -> remedy.replaceAll(".*accept the repair with --accept (\\S+) .*", "$1"))
                .toList();
    }

    private static final String SLIP = "; the repair assumes a slip of drawing: ";

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

    /** Falls one metre for every ten metres east. */
    private void slopingEast() {
        rules = rules.with(place -> OptionalDouble.of(1000 - (place.eastM() - 500000) / 10));
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
                .containsExactly(
                        "WARNING stream-flow-uphill feature 1 (A): A seem to run uphill: of 1 line 0 as drawn fall"
                                + " by 0 m, 1 rises by 9 m, 0 are flat on the elevation grid (if that is right, say --accept"
                                + " as-drawn-all:A)" + SLIP + "all of them are turned round");
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
