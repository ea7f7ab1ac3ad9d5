package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.geo.io.GeoPackageTest.wkt;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class GeoJsonTest {

    private static final SourcePlace PLACE = SourcePlace.file("streams.geojson");
    private static final CoordinateSystem UTM27 =
            CoordinateSystem.named("EPSG:32627", PLACE).value().orElseThrow();

    @TempDir
    Path folder;

    private Checked<FeatureLayer> read(String text) throws Exception {
        Path file = folder.resolve("streams.geojson");
        Files.writeString(file, text);
        return new GeoJsonReader(file, PLACE, UTM27).read();
    }

    private static String collection(String geometry) {
        return "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"code\":\"BRN\"},"
                + "\"geometry\":" + geometry + "}]}";
    }

    @Test
    void metresDeclaredAsDegreesAreRefusedWithTheLikelySystem() throws Exception {
        Checked<FeatureLayer> answer =
                read(collection("{\"type\":\"LineString\",\"coordinates\":[[512400,5096300],[512500,5096400]]}"));

        assertThat(answer.hasErrors()).isTrue();
        assertThat(answer.problems())
                .extracting(Problem::found)
                .containsExactly("coordinates 512400, 5096300 are outside -180\u2026180/-90\u202690:"
                        + " file is probably EPSG:32627");
    }

    @Test
    void metresOfNoKnownSystemAreRefusedWithoutAGuess() throws Exception {
        assertThat(read(collection("{\"type\":\"Point\",\"coordinates\":[99512400,-5096300]}"))
                        .problems())
                .extracting(Problem::found)
                .containsExactly("coordinates 99512400, -5096300 are outside -180\u2026180/-90\u202690:"
                        + " file is probably in metres of a system other than the round's EPSG:32627");
    }

    @Test
    void comesBackWithinTwoCentimetres() throws Exception {
        List<Feature> features = List.of(Feature.of(
                "BRN",
                wkt("LINESTRING (499900.12 5115200.34, 501200 5104100)"),
                Map.of("code", Attribute.of("BRN"), "order", Attribute.of(2L), "wet", Attribute.of(true))));

        Checked<FeatureLayer> back = read(new GeoJsonWriter(UTM27).text(features));

        Feature feature = back.value().orElseThrow().features().get(0);
        assertThat(back.problems()).isEmpty();
        assertThat(feature.id()).isEqualTo("BRN");
        assertThat(feature.attributes()).isEqualTo(features.get(0).attributes());
        assertThat(feature.geometry()
                        .orElseThrow()
                        .equalsExact(features.get(0).geometry().orElseThrow(), 0.02))
                .isTrue();
    }

    @Test
    void writesLongitudeFirstSevenDecimalsCounterclockwiseAndNoCrs() throws Exception {
        // Source: RFC 7946, sections 3.1.1 (order), 3.1.6 (right-hand rule), 4 (no crs), 11.2 (precision).
        String text = new GeoJsonWriter(UTM27)
                .text(List.of(Feature.of(
                        "p",
                        wkt(
                                "POLYGON ((500000 5000000, 500000 5001000, 501000 5001000, 501000 5000000, 500000 5000000))"),
                        Map.of())));

        var root = new ObjectMapper().readTree(text);
        assertThat(root.has("crs")).isFalse();
        var ring = root.at("/features/0/geometry/coordinates/0");
        assertThat(ring.get(0).get(0).asDouble()).isEqualTo(-21.0);
        assertThat(ring.get(1).get(0).asDouble()).isGreaterThan(-21.0);
        assertThat(ring.get(1).get(1).asText()).matches("45\\.\\d{1,7}");
        assertThat(new GeoJsonWriter(UTM27).text(List.of())).doesNotContain("\r");
    }

    @Test
    void saysWhereJsonBreaksOff() throws Exception {
        String whole = collection("{\"type\":\"Point\",\n\"coordinates\":[-20.8,46.0]}");

        assertThat(read(whole.substring(0, whole.length() - 10)).problems())
                .extracting(Problem::sentence)
                .containsExactly(
                        "streams.geojson, line 2: the file is not JSON from here on. Allowed: a GeoJSON file,"
                                + " whole. Do: export the layer again as GeoJSON, or copy the file again if it breaks off here");
    }

    @Test
    void faultyShapesAreNamedAndTheOthersRead() throws Exception {
        Checked<FeatureLayer> answer = read(
                "{\"type\":\"FeatureCollection\",\"features\":["
                        + "{\"type\":\"Feature\",\"id\":\"a\",\"properties\":null,\"geometry\":null},"
                        + "{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"LineString\",\"coordinates\":[[1]]}},"
                        + "{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"Point\",\"coordinates\":[-21,46]}}]}");

        assertThat(answer.problems())
                .extracting(problem -> problem.place() + ": " + problem.code())
                .containsExactly("streams.geojson, feature 2: geometry-unreadable");
        assertThat(answer.value().orElseThrow().features())
                .extracting(feature -> feature.geometry().isPresent())
                .containsExactly(false, false, true);
    }

    private static String stating(String system, String coordinates) {
        String features = collection("{\"type\":\"Point\",\"coordinates\":" + coordinates + "}");
        return features.substring(0, features.length() - 1) + ",\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\""
                + system + "\"}}}";
    }

    @Test
    void aSystemStatedInTheFormOf2008IsReadWithANoteWhereverItStands() throws Exception {
        Checked<FeatureLayer> answer = read(stating("urn:ogc:def:crs:EPSG::32627", "[512400,5096300]"));

        assertThat(answer.problems())
                .extracting(Problem::sentence)
                .containsExactly("streams.geojson: the file is GeoJSON in the form of 2008, which states its coordinate"
                        + " system, EPSG:32627; it was read as that. Do: nothing; RFC 7946 has longitude and latitude"
                        + " on WGS 84 only");
        assertThat(answer.value().orElseThrow().features().get(0).geometry()).contains(wkt("POINT (512400 5096300)"));
    }

    @Test
    void anUnknownStatedSystemIsRefused() throws Exception {
        assertThat(read(stating("urn:x-local:7", "[1,2]")).problems())
                .extracting(Problem::sentence)
                .containsExactly("streams.geojson: the file says its coordinate system is urn:x-local:7. Allowed:"
                        + " longitude and latitude on WGS 84, as RFC 7946 has it, or an EPSG code. Do: export it again"
                        + " in WGS 84, or as a GeoPackage, which may be in any system");
    }
}
