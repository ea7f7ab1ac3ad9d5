package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class StreamReaderTest {

    private static final SourcePlace FILE = SourcePlace.file("streams.gpkg");
    private static final CoordinateSystem UTM27 =
            CoordinateSystem.named("EPSG:32627", FILE).value().orElseThrow();

    private final List<Feature> features = new ArrayList<>();

    /** Coordinates are metres from 500000, 5100000; columns are code, name and flow; a dash stands for null. */
    private StreamReaderTest feature(String code, String name, String flow, String wkt) {
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        Map.of("CODE", code, "Name", name, "flow", flow, "catchment", "C").forEach((column, value) -> {
            if (!value.equals("-")) {
                attributes.put(column, Attribute.of(value));
            }
        });
        Optional<Geometry> shape = wkt.equals("-") ? Optional.empty() : Optional.of(shifted(wkt));
        features.add(new Feature(Integer.toString(features.size() + 1), shape, attributes));
        return this;
    }

    private static Geometry shifted(String wkt) {
        try {
            return org.locationtech.jts.geom.util.AffineTransformation.translationInstance(500000, 5100000)
                    .transform(new WKTReader().read(wkt));
        } catch (ParseException wrong) {
            throw new AssertionError(wrong);
        }
    }

    private Checked<StreamNetwork> read(StreamHints hints, String... accepted) {
        LayerShape shape = new LayerShape(
                "streams", Optional.of(StatedSystem.code("EPSG:32627")), LayerShape.Kind.LINESTRING, List.of());
        return new StreamReader(UTM27, FILE, hints, AcceptedRepairs.of(accepted))
                .read(new FeatureLayer(shape, features));
    }

    private Checked<StreamNetwork> read(String... accepted) {
        return read(StreamHints.NONE, accepted);
    }

    private static List<String> codes(Checked<StreamNetwork> answer) {
        return answer.problems().stream()
                .map(problem -> problem.severity() + " " + problem.code())
                .toList();
    }

    private static String line(Checked<StreamNetwork> answer, String code) {
        return org.locationtech.jts.geom.util.AffineTransformation.translationInstance(-500000, -5100000)
                .transform(answer.value().orElseThrow().line(code).orElseThrow().line())
                .toText();
    }

    private static final String STATED = "source-to-mouth";

    @Test
    void aSoundLineIsReadWithoutAWord() {
        Checked<StreamNetwork> answer = feature("BRN", "Brannet", STATED, "MULTILINESTRING ((0 0, 100 0))")
                .read();

        assertThat(answer.problems()).isEmpty();
        assertThat(line(answer, "BRN")).isEqualTo("LINESTRING (0 0, 100 0)");
    }

    @Test
    void theFilesOwnFlowColumnTurnsALine() {
        assertThat(line(
                        feature("BRN", "B", "Mouth-to-source", "LINESTRING (0 0, 100 0)")
                                .read(),
                        "BRN"))
                .isEqualTo("LINESTRING (100 0, 0 0)");
    }

    @Test
    void shapesThatAreNoLineAreNamedAllAtOnce() {
        feature("A", "a", STATED, "-");
        feature("B", "b", STATED, "LINESTRING EMPTY");
        feature("C", "c", STATED, "LINESTRING (5 5, 5 5)");
        feature("D", "d", STATED, "POINT (5 5)");
        feature("E", "e", STATED, "MULTILINESTRING ((0 0, 1 0), (5 5, 6 6))");
        feature("-", "f", STATED, "LINESTRING (0 0, 1 0)");
        feature("G", "g", "up", "LINESTRING (0 0, 1 0)");

        assertThat(read().problems())
                .filteredOn(problem -> problem.severity() == org.wadeplan.geo.problem.Severity.ERROR)
                .extracting(problem -> problem.place() + ": " + problem.found())
                .containsExactly(
                        "streams.gpkg, feature 1 (A): there is no line, the shape is empty",
                        "streams.gpkg, feature 2 (B): there is no line, the shape is empty",
                        "streams.gpkg, feature 3 (C): the line has no length",
                        "streams.gpkg, feature 4 (D): the shape is a Point",
                        "streams.gpkg, feature 5 (E): the shape is a MultiLineString of 2 parts",
                        "streams.gpkg, feature 6, column code: the code is blank (its name is f)",
                        "streams.gpkg, feature 7 (G), column flow: nothing tells which way the water runs:"
                                + " no flow column, no other line that it joins, no known mouth",
                        "streams.gpkg, feature 7 (G), column flow: \"up\" is not a direction");
    }

    @Test
    void aReversedLineIsAskedAboutAndTurnedOnlyWithConsent() {
        StreamHints hints = new StreamHints(Map.of("OUN", new MetricPoint(500003, 5100004)), Map.of());
        feature("OUN", "Ounder", "-", "LINESTRING (0 0, 3000 0)");

        Checked<StreamNetwork> asked = read(hints);
        assertThat(asked.problems())
                .extracting(Problem::sentence)
                .containsExactly("streams.gpkg, feature 1 (OUN): the line seems to run from mouth to source: its first"
                        + " vertex is 5 m and its last 2997 m from the known mouth (if it is right as drawn, say"
                        + " --accept as-drawn:OUN); the repair assumes a slip of drawing: it is turned round."
                        + " Allowed: a line as the water runs, in one piece, source to mouth."
                        + " Do: look at it on the map; accept the repair with --accept reverse:OUN"
                        + " (the file stays as it is), or correct the file");
        assertThat(line(asked, "OUN")).isEqualTo("LINESTRING (0 0, 3000 0)");

        Checked<StreamNetwork> accepted = read(hints, "reverse:oun");
        assertThat(codes(accepted)).containsExactly("NOTE stream-reversed-repaired");
        assertThat(line(accepted, "OUN")).isEqualTo("LINESTRING (3000 0, 0 0)");

        Checked<StreamNetwork> refused = read(hints, "as-drawn:OUN");
        assertThat(codes(refused)).containsExactly("NOTE stream-flow");
        assertThat(line(refused, "OUN")).isEqualTo("LINESTRING (0 0, 3000 0)");
    }

    @Test
    void aFlowColumnThatTheMouthContradictsIsNotBelieved() {
        StreamHints hints = new StreamHints(Map.of("OUN", new MetricPoint(500000, 5100000)), Map.of());

        assertThat(codes(feature("OUN", "Ounder", STATED, "LINESTRING (0 0, 3000 0)")
                        .read(hints)))
                .containsExactly("ERROR stream-reversed");
    }

    @Test
    void anEndOnTheMiddleOfAnotherLineIsAMouth() {
        feature("MAIN", "Main", STATED, "LINESTRING (0 0, 200 0)");
        feature("GOOD", "Good", "-", "LINESTRING (100 90, 100 0)");
        feature("BACK", "Back", "-", "LINESTRING (50 0.4, 50 90)");

        assertThat(read().problems())
                .extracting(problem ->
                        problem.severity() + " " + problem.place().row().orElseThrow() + " " + problem.code())
                .containsExactly("ERROR feature 3 (BACK) stream-reversed", "NOTE feature 2 (GOOD) stream-flow");
    }

    @Test
    void aGapIsJoinedOnlyWithConsent() {
        feature("HSK", "Hesk", STATED, "LINESTRING (0 0, 100 0)");
        feature("HSK", "Hesk", STATED, "LINESTRING (112 0, 300 0)");

        Checked<StreamNetwork> asked = read();
        assertThat(asked.problems())
                .extracting(Problem::sentence)
                .containsExactly("streams.gpkg, feature 2 (HSK): HSK is in two pieces with a gap of 12.0 m near 500100,"
                        + " 5100000; the repair assumes a slip of drawing: the two are joined by a straight line."
                        + " Allowed: a line as the water runs, in one piece, source to mouth."
                        + " Do: look at it on the map; accept the repair with --accept join-gap:HSK"
                        + " (the file stays as it is), or correct the file");

        Checked<StreamNetwork> joined = read("join-gap:HSK");
        assertThat(codes(joined)).containsExactly("NOTE stream-gap-repaired");
        assertThat(line(joined, "HSK")).isEqualTo("LINESTRING (0 0, 100 0, 112 0, 300 0)");
    }

    @Test
    void partsInAnyOrderThatTouchAreOneLine() {
        feature("A", "a", STATED, "LINESTRING (200 0, 300 0)");
        feature("A", "a", STATED, "LINESTRING (0 0, 100 0)");
        feature("A", "a", STATED, "LINESTRING (100 0, 200 0)");

        Checked<StreamNetwork> answer = read();
        assertThat(answer.problems()).isEmpty();
        assertThat(line(answer, "A")).isEqualTo("LINESTRING (0 0, 100 0, 200 0, 300 0)");
    }

    @Test
    void aPartThatRunsAgainstTheOtherIsTurnedOnlyWithConsent() {
        feature("A", "a", STATED, "LINESTRING (0 0, 100 0)");
        feature("A", "a", STATED, "LINESTRING (200 0, 100 0)");

        assertThat(codes(read())).containsExactly("ERROR stream-part-reversed");
        assertThat(line(read("reverse-part:A"), "A")).isEqualTo("LINESTRING (0 0, 100 0, 200 0)");
    }

    @Test
    void farPiecesOfOneCodeAreNotJoinedAtAll() {
        feature("A", "a", STATED, "LINESTRING (0 0, 100 0)");
        feature("A", "a", STATED, "LINESTRING (900 0, 1000 0)");

        assertThat(codes(read("join-gap:A"))).containsExactly("ERROR stream-in-pieces", "WARNING repair-not-offered");
    }

    @Test
    void aSpikeIsDroppedOnlyWithConsent() {
        feature("TOL", "Tollow", STATED, "LINESTRING (0 0, 20 0, 30 90, 25 1, 100 0)");

        Checked<StreamNetwork> asked = read();
        assertThat(asked.problems())
                .extracting(Problem::found)
                .containsExactly("the line runs out to 500030, 5100090 (vertex 3) and straight back, which adds 175 m;"
                        + " the repair assumes a slip of drawing: that vertex is left out");

        Checked<StreamNetwork> mended = read("drop-spike:TOL");
        assertThat(codes(mended)).containsExactly("NOTE stream-spike-repaired");
        assertThat(line(mended, "TOL")).isEqualTo("LINESTRING (0 0, 20 0, 25 1, 100 0)");
    }

    @Test
    void aMissingNameIsTakenFromTheRoundByCode() {
        feature("PEL", "-", STATED, "LINESTRING (0 0, 100 0)");
        Checked<StreamNetwork> answer = read(new StreamHints(Map.of(), Map.of("PEL", "Pell")));

        assertThat(answer.problems())
                .extracting(Problem::sentence)
                .containsExactly("streams.gpkg, feature 1 (PEL), column name: the name is blank; assumed to be Pell, by"
                        + " its code PEL. Allowed: what people call the stream."
                        + " Do: nothing if that is right; if not, write the name into the file");
        assertThat(answer.value().orElseThrow().line("PEL").orElseThrow().name())
                .contains("Pell");
    }

    @Test
    void repeatedVerticesArePassedOverAndNoted() {
        Checked<StreamNetwork> answer = feature("A", "a", STATED, "LINESTRING (0 0, 0 0, 50 0, 50 0, 100 0)")
                .read();

        assertThat(codes(answer)).containsExactly("NOTE stream-repeated-vertices");
        assertThat(line(answer, "A")).isEqualTo("LINESTRING (0 0, 50 0, 100 0)");
    }

    @Test
    void linesOutsideTheAreaOfTheRoundsSystemAreRefused() {
        assertThat(codes(feature("A", "a", STATED, "LINESTRING (4600000 -4600000, 4600100 -4600000)")
                        .read()))
                .containsExactly("ERROR stream-out-of-area");
    }

    @Test
    void aLineThatCrossesItselfIsWarnedAbout() {
        assertThat(codes(feature("A", "a", STATED, "LINESTRING (0 0, 100 0, 100 50, 50 50, 50 -50)")
                        .read()))
                .containsExactly("WARNING stream-crosses-itself");
    }

    @Test
    void anotherSystemIsBroughtIntoTheRounds() {
        LayerShape degrees =
                new LayerShape("s", Optional.of(StatedSystem.code("EPSG:4326")), LayerShape.Kind.LINESTRING, List.of());
        Feature feature = Feature.of(
                "1",
                shifted("LINESTRING (-500021 -5099954, -500021 -5099953)"),
                Map.of(
                        "code",
                        Attribute.of("A"),
                        "name",
                        Attribute.of("a"),
                        "catchment",
                        Attribute.of("C"),
                        "flow",
                        Attribute.of(STATED)));

        Checked<StreamNetwork> answer = new StreamReader(UTM27, FILE, StreamHints.NONE, AcceptedRepairs.NONE)
                .read(new FeatureLayer(degrees, List.of(feature)));

        // Source: UTM definition: the central meridian of zone 27, 21 degrees west, has easting 500 000 m.
        assertThat(answer.problems()).isEmpty();
        assertThat(answer.value().orElseThrow().at("A", 0).eastM())
                .isEqualTo(500000, org.assertj.core.api.Assertions.within(0.001));
    }

    @Test
    void aLayerWithoutACodeForItsSystemIsRefused() {
        LayerShape unknown = new LayerShape("s", Optional.empty(), LayerShape.Kind.LINESTRING, List.of());

        assertThat(codes(new StreamReader(UTM27, FILE, StreamHints.NONE, AcceptedRepairs.NONE)
                        .read(new FeatureLayer(unknown, List.of()))))
                .containsExactly("ERROR crs-missing");
    }

    @Test
    void aLineThatOnlyRunsOutAndBackCannotBeMended() {
        assertThat(codes(feature("A", "a", STATED, "LINESTRING (0 0, 100 0, 0 0)")
                        .read("drop-spike:A")))
                .contains("ERROR stream-out-and-back", "WARNING repair-not-offered");
    }
}
