package org.wadeplan.geo.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.GeoJsonReader;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.network.AcceptedRepairs;
import org.wadeplan.geo.network.LineMeasure;
import org.wadeplan.geo.network.StreamHints;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.network.StreamReader;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachLayer;
import org.wadeplan.geo.reach.ReachRule;
import org.wadeplan.geo.reach.SiteStart;
import org.wadeplan.geo.reach.SubReach;

class DemoStreamsTest {

    private static final Path COMMITTED = Path.of("..", "demo-sites");
    private static final SourcePlace FILE = SourcePlace.file("streams.gpkg");

    @TempDir
    static Path made;

    @BeforeAll
    static void makeAgain() throws Exception {
        DemoStreams.write(made);
        if (Boolean.getBoolean("update.golden")) {
            DemoStreams.write(COMMITTED);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ilvermoor/streams.gpkg",
                "ilvermoor/streams.geojson",
                "ilvermoor/catchments.gpkg",
                "ilvermoor/parcels.gpkg",
                "ilvermoor/roads.gpkg",
                "ilvermoor/elevation.tif",
                "ilvermoor-troubled/streams.gpkg",
                "ilvermoor-troubled/streams.geojson",
                "ilvermoor-troubled/catchments.gpkg",
                "ilvermoor-troubled/parcels.gpkg",
                "ilvermoor-troubled/roads.gpkg",
                "ilvermoor-troubled/elevation.tif",
                "ilvermoor-troubled/bad/streams.gpkg",
                "ilvermoor-troubled/bad/streams_wrongcrs.geojson",
                "ilvermoor-troubled/bad/truncated.gpkg",
                "ilvermoor-troubled/bad/empty.gpkg"
            })
    void theCommittedFilesAreThoseThatTheGeneratorMakes(String file) {
        assertThat(COMMITTED.resolve(file)).hasSameBinaryContentAs(made.resolve(file));
    }

    private static StreamNetwork network() {
        Checked<StreamNetwork> answer = new StreamReader(
                        DemoGeometry.UTM27, FILE, StreamHints.NONE, AcceptedRepairs.NONE)
                .read(layer("ilvermoor/streams.gpkg", "streams"));
        assertThat(answer.problems()).isEmpty();
        return answer.value().orElseThrow();
    }

    private static FeatureLayer layer(String file, String name) {
        return new GeoPackageReader(made.resolve(file), FILE).read(name).value().orElseThrow();
    }

    @Test
    void linesWindGentlyAndPassExactlyThroughTheSites() {
        StreamNetwork network = network();
        DemoPlaces.sites().forEach((site, at) -> assertThat(network.line(DemoPlaces.streamOf(site))
                        .orElseThrow()
                        .line()
                        .getCoordinates())
                .as(site)
                .contains(at));
        Map<String, Double> controlM = new TreeMap<>();
        DemoPlaces.streams().forEach(line -> controlM.put(line.code(), lengthM(line.vertices())));
        for (StreamLine line : network.lines()) {
            assertThat(line.lengthM() / controlM.getOrDefault(line.code(), 0.0))
                    .as("how much longer %s is than its control line", line.code())
                    .isBetween(1.02, 1.14);
            Coordinate[] vertices = line.line().getCoordinates();
            for (int i = 1; i < vertices.length; i++) {
                assertThat(vertices[i - 1].distance(vertices[i])).isBetween(1.0, 25.0);
            }
        }
    }

    private static double lengthM(List<Coordinate> vertices) {
        return DemoGeometry.SHAPES
                .createLineString(vertices.toArray(new Coordinate[0]))
                .getLength();
    }

    @Test
    void theSnailsLimitStillPartsTheTwoSitesOfTheOunder() {
        // The demo round parts the Ounder's waters 8800 m from the mouth, on the winding line.
        assertThat(fromMouthM("OUN-02")).isLessThan(8700);
        assertThat(fromMouthM("OUN-02B")).isGreaterThan(8900);
    }

    private static double fromMouthM(String site) {
        Coordinate at = Optional.ofNullable(DemoPlaces.sites().get(site)).orElseThrow();
        return network().fromMouthM(DemoPlaces.streamOf(site), new MetricPoint(at.x, at.y));
    }

    @Test
    void everySiteGetsAReachOfTenSubReachesOfFifteenMetresOnItsOwnParcel() {
        // Source: round rule: 150 m in ten sub-reaches, spacing along the line 15.00 m +- 0.01.
        StreamNetwork network = network();
        List<Feature> parcels = layer("ilvermoor/parcels.gpkg", "parcels").features();
        ReachLayer layer = new ReachLayer(network, DemoGeometry.UTM27, new ReachRule(150, 10, "common practice"));
        DemoPlaces.sites().forEach((site, at) -> {
            Checked<Reach> laid = layer.lay(
                    new SiteStart(site, DemoPlaces.streamOf(site), "XX01", new MetricPoint(at.x, at.y), Bank.LEFT),
                    FILE);
            assertThat(laid.problems()).as(site).isEmpty();
            Reach reach = laid.value().orElseThrow();
            LineMeasure own = new LineMeasure(reach.line());
            for (SubReach piece : reach.subReaches()) {
                double fromM = own.foot(piece.downstream().at()).chainageM();
                assertThat(own.foot(piece.upstream().at()).chainageM() - fromM).isEqualTo(15, within(0.01));
            }
            assertThat(parcels)
                    .filteredOn(parcel -> parcel.geometry().orElseThrow().covers(reach.line()))
                    .extracting(parcel -> parcel.text("parcel").orElseThrow())
                    .containsExactly("L-" + site);
        });
    }

    @Test
    void onlyTheParcelOfOneSiteIsRefused() {
        assertThat(layer("ilvermoor/parcels.gpkg", "parcels").features())
                .filteredOn(parcel -> parcel.text("consent_status").equals(Optional.of("refused")))
                .extracting(parcel -> parcel.text("parcel").orElseThrow())
                .containsExactly("L-OUN-02");
    }

    @Test
    void catchmentsHoldTheirStreamsAndDoNotOverlap() {
        List<Feature> catchments =
                layer("ilvermoor/catchments.gpkg", "catchments").features();
        StreamNetwork network = network();
        for (Feature one : catchments) {
            Geometry area = one.geometry().orElseThrow();
            String code = one.text("code").orElseThrow();
            assertThat(area.isValid()).isTrue();
            assertThat(area.covers(network.line(code).orElseThrow().line()))
                    .as(code)
                    .isTrue();
            for (Feature other : catchments) {
                if (!other.id().equals(one.id())) {
                    assertThat(area.intersection(other.geometry().orElseThrow()).getArea())
                            .as("%s and %s", code, other.text("code"))
                            .isZero();
                }
            }
        }
    }

    private static Checked<StreamNetwork> planted(String... accepted) {
        StreamHints hints = new StreamHints(
                Map.of("OUN", new MetricPoint(512100, 5078600)), Map.of("PEL", "Pell", "OUN", "Ounder"));
        return new StreamReader(DemoGeometry.UTM27, FILE, hints, AcceptedRepairs.of(accepted))
                .read(layer("ilvermoor-troubled/bad/streams.gpkg", "streams"));
    }

    @Test
    void thePlantedFaultsAreAllFoundAndMendedOnlyWithConsent() {
        assertThat(planted().problems())
                .extracting(problem ->
                        problem.severity() + " " + problem.place().row().orElseThrow() + " " + problem.code())
                .containsExactly(
                        "ERROR feature 3 (HSK) stream-gap",
                        "ERROR feature 4 (TOL) stream-spike",
                        "ERROR feature 5 (OUN) stream-reversed",
                        "WARNING feature 6 (PEL) stream-name-missing");

        Checked<StreamNetwork> mended = planted("reverse:OUN", "join-gap:HSK", "drop-spike:TOL");
        assertThat(mended.hasErrors()).isFalse();
        for (StreamLine line : mended.value().orElseThrow().lines()) {
            assertThat(line.lengthM())
                    .as(line.code())
                    .isEqualTo(network().line(line.code()).orElseThrow().lengthM(), within(0.01));
        }
    }

    @Test
    void damagedFilesGetOnePlainSentence() {
        Path bad = made.resolve("ilvermoor-troubled/bad");

        assertThat(new GeoPackageReader(bad.resolve("truncated.gpkg"), FILE)
                        .read("streams")
                        .problems())
                .extracting(Problem::code)
                .containsExactly("file-truncated");
        assertThat(new GeoPackageReader(bad.resolve("empty.gpkg"), FILE)
                        .read("streams")
                        .problems())
                .extracting(Problem::code)
                .containsExactly("file-empty");
        assertThat(new GeoJsonReader(bad.resolve("streams_wrongcrs.geojson"), FILE, DemoGeometry.UTM27)
                        .read()
                        .problems())
                .extracting(Problem::found)
                .containsExactly("coordinates 512400, 5096300 are outside -180\u2026180/-90\u202690:"
                        + " file is probably EPSG:32627; so are those of 5 more features");
    }

    @Test
    void theGeoJsonHoldsTheSameLines() {
        Checked<FeatureLayer> answer =
                new GeoJsonReader(made.resolve("ilvermoor/streams.geojson"), FILE, DemoGeometry.UTM27).read();

        assertThat(answer.problems()).isEmpty();
        assertThat(Files.exists(made.resolve("ilvermoor/streams.geojson"))).isTrue();
        for (Feature feature : answer.value().orElseThrow().features()) {
            Geometry line = network()
                    .line(feature.text("code").orElseThrow())
                    .orElseThrow()
                    .line();
            assertThat(feature.geometry().orElseThrow().equalsExact(line, 0.02)).isTrue();
        }
    }
}
