package org.wadeplan.planner.pack.track;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.wadeplan.planner.pack.SmallPlan;
import org.wadeplan.planner.pack.SmallRound;
import org.wadeplan.planner.round.Round;

/** Rules checked: the GPX 1.1 schema's order of elements, RFC 7946, and the tables of GeoPackage 1.3. */
class TrackFilesTest {

    @TempDir
    static Path folder;

    @BeforeAll
    static void write() throws Exception {
        Round round = SmallRound.round(folder);
        TrackFiles files = new TrackFiles(round, SmallPlan.of(round).reaches(), Instant.parse("2027-09-03T16:00:00Z"));
        assertThat(files.writeAll(folder)).isEmpty();
    }

    private static Element gpx() throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder()
                .parse(folder.resolve(TrackFiles.GPX).toFile())
                .getDocumentElement();
    }

    @Test
    void ordersGpxElementsAsItsSchemaDoes() throws Exception {
        assertThat(gpx().getNamespaceURI()).isEqualTo("http://www.topografix.com/GPX/1/1");
        assertThat(gpx().getAttribute("version")).isEqualTo("1.1");
        String order = String.join(" ", names(gpx().getChildNodes()));
        assertThat(order).matches("metadata( wpt)+( rte)+");
        Node waypoint = gpx().getElementsByTagName("wpt").item(0);
        assertThat(names(waypoint.getChildNodes())).containsExactly("name", "desc", "sym");
    }

    @Test
    void namesEachStakeInTenCharactersAndOnce() throws Exception {
        List<String> names = new ArrayList<>();
        NodeList waypoints = gpx().getElementsByTagName("wpt");
        for (int i = 0; i < waypoints.getLength(); i++) {
            names.add(((Element) waypoints.item(i))
                    .getElementsByTagName("name")
                    .item(0)
                    .getTextContent());
        }
        assertThat(names)
                .hasSize(4 * 11)
                .doesNotHaveDuplicates()
                .contains("BR01-000", "PE02-150")
                .allSatisfy(name -> assertThat(name).hasSizeLessThanOrEqualTo(10));
    }

    @Test
    void writesGeoJsonAsLongitudeAndLatitude() throws Exception {
        JsonNode stakes = new ObjectMapper()
                .readTree(folder.resolve(TrackFiles.STAKES_GEOJSON).toFile());
        assertThat(stakes.path("type").asText()).isEqualTo("FeatureCollection");
        assertThat(stakes.has("crs")).isFalse();
        JsonNode first = stakes.path("features").get(0);
        assertThat(first.at("/properties/stake").asText()).isEqualTo("BR01-000");
        assertThat(first.at("/geometry/coordinates/0").asDouble()).isBetween(-20.960, -20.959);
        assertThat(first.at("/geometry/coordinates/1").asDouble()).isBetween(46.138, 46.139);
    }

    @Test
    void writesThreeMetricLayers() throws Exception {
        try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(TrackFiles.GEOPACKAGE));
                Statement statement = file.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT c.table_name || ' ' || g.geometry_type_name || ' ' || c.srs_id FROM gpkg_contents c"
                                + " JOIN gpkg_geometry_columns g ON g.table_name = c.table_name ORDER BY 1")) {
            List<String> layers = new ArrayList<>();
            while (rows.next()) {
                layers.add(rows.getString(1));
            }
            assertThat(layers)
                    .containsExactly("reaches LINESTRING 32627", "stakes POINT 32627", "streams LINESTRING 32627");
        }
    }

    private static List<String> names(NodeList nodes) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            if (nodes.item(i) instanceof Element element) {
                names.add(element.getLocalName());
            }
        }
        return names;
    }
}
