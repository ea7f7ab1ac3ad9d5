package org.wadeplan.geo.reach;

import static org.assertj.core.api.Assertions.assertThat;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.io.GpxContent;
import org.wadeplan.geo.io.GpxWriter;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class ReachGpxTest {

    private static final SourcePlace FILE = SourcePlace.file("stakes.gpx");
    private static final Instant CREATED = Instant.parse("2027-09-01T08:00:00Z");

    private static Reach reach() throws Exception {
        CoordinateSystem utm27 =
                CoordinateSystem.named("EPSG:32627", FILE).value().orElseThrow();
        LineString line = (LineString) new WKTReader().read("LINESTRING (500000 5101000, 500000 5100000)");
        StreamNetwork network = new StreamNetwork(List.of(new StreamLine("BRN", Optional.empty(), "BRN", line)));
        return new ReachLayer(network, utm27, new ReachRule(150, 10, "common practice"))
                .lay(new SiteStart("BRN-01", "BRN", "BR01", new MetricPoint(500000, 5100300), Bank.RIGHT), FILE)
                .value()
                .orElseThrow();
    }

    @Test
    void stakesAreWaypointsAndTheRouteRunsUpstream() throws Exception {
        String text = GpxWriter.document(ReachGpx.of("Ilvermoor", List.of(reach()), CREATED, 5), FILE)
                .value()
                .orElseThrow();

        GPX back = GPX.Reader.DEFAULT.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        assertThat(back.getWayPoints())
                .extracting(point -> point.getName().orElseThrow())
                .hasSize(11)
                .startsWith("BR01-000")
                .endsWith("BR01-150");
        List<WayPoint> stops = back.getRoutes().get(0).getPoints();
        assertThat(stops.get(0).getLatitude().doubleValue())
                .isLessThan(stops.get(10).getLatitude().doubleValue());
        assertThat(back.getWayPoints().get(1).getDescription()).contains("BRN-01, 15 m, true right bank");
        assertThat(back.getMetadata().orElseThrow().getTime()).contains(CREATED);
    }

    @Test
    void hasTheOrderAndFormThatTheSchemaDemands() throws Exception {
        // Source: GPX 1.1 schema: metadata, then wpt, then rte; in wpt name before desc before sym; a decimal point.
        String text = GpxWriter.document(ReachGpx.of("Ilvermoor", List.of(reach()), CREATED, 5), FILE)
                .value()
                .orElseThrow();

        assertThat(text)
                .contains("version=\"1.1\"")
                .contains("http://www.topografix.com/GPX/1/1")
                .contains("<time>2027-09-01T08:00:00Z</time>")
                .containsPattern("(?s)<metadata>.*</metadata>.*<wpt lat=\"4[0-9.]+\" lon=\"-2[0-9.]+\">\\s*"
                        + "<name>BR01-000</name>\\s*<desc>.*?</desc>\\s*<sym>.*<rte>\\s*<name>BRN-01</name>");
    }

    @Test
    void namesThatClashOnceCutAreReported() {
        GpxContent content = new GpxContent(
                "x",
                "y",
                CREATED,
                List.of(
                        new GpxContent.Waypoint("BRANNET-01-000", "", new LonLat(0, 0)),
                        new GpxContent.Waypoint("BRANNET-01-015", "", new LonLat(0, 0)),
                        new GpxContent.Waypoint("br01-000", "", new LonLat(0, 0)),
                        new GpxContent.Waypoint("BR01-000", "", new LonLat(0, 0))),
                List.of());

        var answer = GpxWriter.document(content, FILE);
        assertThat(answer.value()).isEmpty();
        assertThat(answer.problems())
                .extracting(Problem::found)
                .containsExactly(
                        "the names br01-000, BR01-000 would all be shown as BR01-000",
                        "the names BRANNET-01-000, BRANNET-01-015 would all be shown as BRANNET-01",
                        "the name \"BRANNET-01-000\" has 14 characters",
                        "the name \"BRANNET-01-015\" has 14 characters");
    }
}
