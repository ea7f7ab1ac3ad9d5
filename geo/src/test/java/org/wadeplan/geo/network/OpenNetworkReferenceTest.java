package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.crs.Reprojection;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * The graph made of shapes alone against what open stream data says about itself: skipped where the data is absent.
 *
 * <p>Sources: United States flowline data (CC0): StreamOrde, Divergence, ArbolateSu, Pathlength; figures for the outlet of
 * one file published with it; OpenStreetMap waterways (ODbL 1.0) against comparing every vertex with every other.
 */
class OpenNetworkReferenceTest {

    private static final double KM = 1000;

    private record Open(StreamGraph graph, Map<String, Feature> features, BitSet minorArms) {

        double number(int piece, String column) {
            Feature feature = features.get(graph.lines().id(graph.line(piece)));
            return feature == null
                    ? Double.NaN
                    : Double.parseDouble(feature.text(column).orElseThrow());
        }
    }

    private static Open open(String file, String layer, Reprojection reprojection) {
        FeatureLayer features = OpenDataReferenceTest.layer(file, layer);
        Map<String, Feature> byId = new TreeMap<>();
        LineSetBuilder lines = new LineSetBuilder();
        for (Feature feature : features.features()) {
            String id = OpenDataReferenceTest.whole(feature, "COMID");
            byId.put(id, feature);
            lines.add(id, (LineString)
                    reprojection.apply(feature.geometry().orElseThrow()).getGeometryN(0));
        }
        StreamGraph graph = StreamNoding.graph(lines.build(), StreamNoding.SNAP_TOLERANCE_M);
        Open open = new Open(graph, byId, new BitSet());
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            open.minorArms().set(piece, open.number(piece, "Divergence") == 2);
        }
        return open;
    }

    private static Open newHope() {
        return open("usgs_new_hope.gpkg", "nhdplus_flowline", Reprojection.NONE);
    }

    private static Open walker() {
        SourcePlace file = SourcePlace.file("usgs_walker.gpkg");
        CoordinateSystem utm10 =
                CoordinateSystem.named("EPSG:32610", file).value().orElseThrow();
        return open(
                "usgs_walker.gpkg",
                "NHDFlowline_Network",
                utm10.from("EPSG:4269", file).value().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"newHope, 746", "walker, 62"})
    void ordersFromShapesAloneAreThoseOfTheData(String name, int count) {
        Open open = name.equals("walker") ? walker() : newHope();
        StreamOrder order = StreamOrder.of(open.graph(), open.minorArms());
        Map<String, Integer> expected = new TreeMap<>();
        Map<String, Integer> found = new TreeMap<>();
        for (int piece = 0; piece < open.graph().pieceCount(); piece++) {
            String id = open.graph().lines().id(open.graph().line(piece));
            expected.put(id, (int) open.number(piece, "StreamOrde"));
            found.put(id, order.strahler(piece).orElse(-1));
        }
        assertThat(found).hasSize(count).isEqualTo(expected);
    }

    @Test
    void newHopeHasTheConfluencesThatAnotherProgramCounts() {
        StreamGraph graph = newHope().graph();
        int confluences = 0;
        for (int node = 0; node < graph.nodeCount(); node++) {
            confluences += graph.isConfluence(node) ? 1 : 0;
        }
        assertThat(confluences).isEqualTo(307);
    }

    @Test
    void walkersOutletHasThePublishedOrders() {
        StreamGraph graph = walker().graph();
        StreamOrder order = StreamOrder.of(graph);
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            if (graph.lines().id(graph.line(piece)).equals("5329303")) {
                assertThat(order.strahler(piece)).hasValue(4);
                assertThat(order.shreve(piece)).hasValue(26);
                return;
            }
        }
        assertThat(graph.pieceCount()).as("line 5329303 is in the file").isNegative();
    }

    /**
     * The data gives each length in whole metres, so the sum over 746 lines may be off by 0.5 m for each line above; what is
     * found stays below 10 m at 577 km. Walker's lengths cannot be compared: its shapes are thinned and about a tenth short.
     */
    @Test
    void upstreamLengthIsThatOfTheData() {
        Open open = newHope();
        Drainage drainage = Drainage.of(open.graph(), open.minorArms());
        for (int piece = 0; piece < open.graph().pieceCount(); piece++) {
            assertThat(drainage.upstreamLengthM(piece)).isEqualTo(open.number(piece, "ArbolateSu") * KM, within(10.0));
        }
    }

    /** The data measures from a mouth far below the file, so each length is held against that of the file's outlet. */
    @Test
    void theWayToTheMouthIsThatOfTheData() {
        Open open = newHope();
        StreamGraph graph = open.graph();
        Drainage drainage = Drainage.of(graph, open.minorArms());
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            int[] path = drainage.pathToMouth(piece);
            double belowM = (open.number(piece, "Pathlength") - open.number(path[path.length - 1], "Pathlength")) * KM;
            assertThat(drainage.toMouthM(new LinePlace(graph.line(piece), graph.toM(piece)))
                            .orElseThrow())
                    .isEqualTo(belowM, within(5.0));
        }
    }

    @Test
    void waterwaysMeetWhereverTwoHaveAVertexInCommon() {
        FeatureLayer waterways = OpenDataReferenceTest.layer("osm_north_bayreuth.gpkg", "waterways");
        SourcePlace file = SourcePlace.file("osm_north_bayreuth.gpkg");
        CoordinateSystem utm32 =
                CoordinateSystem.named("EPSG:32632", file).value().orElseThrow();
        Reprojection reprojection =
                utm32.from(waterways.shape().crs().orElseThrow(), file).value().orElseThrow();
        LineSetBuilder builder = new LineSetBuilder();
        for (Feature feature : waterways.features()) {
            builder.add(feature.id(), (LineString)
                    reprojection.apply(feature.geometry().orElseThrow()).getGeometryN(0));
        }
        LineSet lines = builder.build();

        assertThat(meetings(StreamNoding.graph(lines, 0)))
                .isEqualTo(commonVertices(lines))
                .hasSizeGreaterThan(100);
    }

    private static Set<String> meetings(StreamGraph graph) {
        TreeMap<Integer, TreeSet<Integer>> linesAt = new TreeMap<>();
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            linesAt.computeIfAbsent(graph.fromNode(piece), unseen -> new TreeSet<>())
                    .add(graph.line(piece));
            linesAt.computeIfAbsent(graph.toNode(piece), unseen -> new TreeSet<>())
                    .add(graph.line(piece));
        }
        TreeSet<String> meetings = new TreeSet<>();
        linesAt.forEach((node, lines) -> {
            if (lines.size() > 1) {
                meetings.add(graph.nodeAt(node) + " " + lines);
            }
        });
        return meetings;
    }

    private static Set<String> commonVertices(LineSet lines) {
        TreeMap<String, TreeSet<Integer>> linesAt = new TreeMap<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            for (int vertex = lines.firstVertex(line); vertex < lines.endVertex(line); vertex++) {
                linesAt.computeIfAbsent(
                                new MetricPoint(lines.eastM(vertex), lines.northM(vertex)).toString(),
                                unseen -> new TreeSet<>())
                        .add(line);
            }
        }
        TreeSet<String> meetings = new TreeSet<>();
        linesAt.forEach((place, at) -> {
            if (at.size() > 1) {
                meetings.add(place + " " + at);
            }
        });
        return meetings;
    }
}
