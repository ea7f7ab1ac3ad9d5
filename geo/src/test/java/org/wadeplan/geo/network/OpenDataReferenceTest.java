package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.crs.Reprojection;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.io.MapFile;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Against open stream data, which is no part of the project: skipped where it is absent.
 *
 * <p>Sources: United States flowline data (CC0), whose own attributes give order, nodes and splits; figures for whole
 * reaches and nearest lines computed with PostGIS 3.3.2 on the same files; OpenStreetMap waterways (ODbL 1.0).
 */
class OpenDataReferenceTest {

    private static final Path DATA = Path.of("..", "..", "shared", "data");

    static FeatureLayer layer(String file, String layer) {
        assumeTrue(
                Files.isRegularFile(DATA.resolve(file)),
                "skipped: the open data file " + file + " is not beside the project, in ../shared/data");
        Checked<FeatureLayer> answer = new GeoPackageReader(DATA.resolve(file), SourcePlace.file(file)).read(layer);
        assertThat(answer.problems()).isEmpty();
        return answer.value().orElseThrow();
    }

    private static FeatureLayer newHope() {
        return layer("usgs_new_hope.gpkg", "nhdplus_flowline");
    }

    private static StreamNetwork network(FeatureLayer layer, String code, Reprojection reprojection) {
        List<StreamLine> lines = new ArrayList<>();
        for (Feature feature : layer.features()) {
            LineString line = (LineString)
                    reprojection.apply(feature.geometry().orElseThrow()).getGeometryN(0);
            lines.add(new StreamLine(feature.text(code).orElseThrow(), Optional.empty(), "", line));
        }
        return new StreamNetwork(lines);
    }

    private static int wholeReaches(StreamNetwork network) {
        return network.lines().stream()
                .mapToInt(line -> (int) Math.floor(line.lengthM() / 150))
                .sum();
    }

    @Test
    void newHopeHoldsTheReachesThatAnotherProgramCounts() {
        StreamNetwork network = network(newHope(), "comid", Reprojection.NONE);

        assertThat(network.lines()).hasSize(746);
        assertThat(network.lines().stream().mapToDouble(StreamLine::lengthM).sum())
                .isEqualTo(577_379, within(1.0));
        assertThat(wholeReaches(network)).isEqualTo(3496);
    }

    @ParameterizedTest
    @CsvSource({
        "1510000, 1565000, 8896054, 449.598, 388.862",
        "1505000, 1570000, 8895564, 208.060, 987.862",
        "1515000, 1560000, 8894326, 330.689, 670.394"
    })
    void newHopesNearestLinesAreThoseOfAnotherProgram(
            double eastM, double northM, String comid, double distanceM, double chainageM) {
        StreamNetwork.Candidate nearest = network(newHope(), "comid", Reprojection.NONE)
                .nearest(new MetricPoint(eastM, northM))
                .orElseThrow();

        assertThat(nearest.stream().code()).isEqualTo(comid);
        assertThat(nearest.foot().distanceM()).isEqualTo(distanceM, within(0.001));
        assertThat(nearest.foot().chainageM()).isEqualTo(chainageM, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"usgs_new_hope.gpkg, nhdplus_flowline, 746", "usgs_walker.gpkg, NHDFlowline_Network, 62"})
    void everyStrahlerOrderIsThatOfTheData(String file, String layer, int count) {
        List<Feature> features = layer(file, layer).features();
        List<StreamOrder.Piece> pieces = new ArrayList<>();
        Map<String, Integer> published = new TreeMap<>();
        for (Feature feature : features) {
            String id = whole(feature, "COMID");
            boolean minor = whole(feature, "Divergence").equals("2");
            pieces.add(new StreamOrder.Piece(id, whole(feature, "FromNode"), whole(feature, "ToNode"), minor));
            published.put(id, Integer.parseInt(whole(feature, "StreamOrde")));
        }

        assertThat(published).hasSize(count);
        assertThat(StreamOrder.strahler(pieces)).isEqualTo(published);
    }

    static String whole(Feature feature, String column) {
        return Long.toString(Math.round(Double.parseDouble(feature.text(column).orElseThrow())));
    }

    @ParameterizedTest
    @CsvSource({
        "usgs_new_hope.gpkg, nhdplus_flowline, EPSG:26917, 746, 577.376",
        "usgs_walker.gpkg, NHDFlowline_Network, EPSG:26910, 62, 123.2"
    })
    void aLayerWithoutACodeForItsSystemIsReadByItsDescription(
            String file, String layer, String code, int count, double lengthKm) {
        // Lengths: the column LENGTHKM of the data, whose system is of equal area, not of equal length.
        layer(file, layer);
        SourcePlace place = SourcePlace.file(file);
        CoordinateSystem round = CoordinateSystem.named(code, place).value().orElseThrow();

        Checked<FeatureLayer> answer = MapFile.read(DATA.resolve(file), layer, place, round);

        assertThat(answer.problems())
                .extracting(Problem::severity)
                .containsOnly(org.wadeplan.geo.problem.Severity.NOTE);
        assertThat(answer.value().orElseThrow().features()).hasSize(count);
        assertThat(answer.value().orElseThrow().features().stream()
                        .mapToDouble(feature -> feature.geometry().orElseThrow().getLength())
                        .sum())
                .isEqualTo(lengthKm * 1000, within(lengthKm * 1000 * 0.006));
    }

    @Test
    void waterwaysInDegreesAreMeasuredInMetres() {
        FeatureLayer waterways = layer("osm_north_bayreuth.gpkg", "waterways");
        SourcePlace file = SourcePlace.file("osm_north_bayreuth.gpkg");
        CoordinateSystem utm32 =
                CoordinateSystem.named("EPSG:32632", file).value().orElseThrow();
        Reprojection reprojection =
                utm32.from(waterways.shape().crs().orElseThrow(), file).value().orElseThrow();
        StreamNetwork network = network(waterways, "osm_id", reprojection);

        assertThat(network.lines()).hasSize(228);
        assertThat(network.lines().stream().mapToDouble(StreamLine::lengthM).sum())
                .isEqualTo(81_200, within(50.0));
        assertThat(wholeReaches(network)).isEqualTo(459);
        assertThat(network.junctions()).hasSizeGreaterThan(100);
    }
}
