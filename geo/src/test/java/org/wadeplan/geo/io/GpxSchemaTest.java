package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.net.URL;
import java.time.Instant;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.problem.SourcePlace;
import org.xml.sax.SAXException;

/**
 * Our documents against the rules of GPX 1.1, written anew in {@code gpx-1.1-restated.xsd} from the description of the
 * format, since no copy of the published schema could be had.
 */
class GpxSchemaTest {

    private static final SourcePlace PLACE = SourcePlace.file("stakes.gpx");

    private static void validate(String document) throws SAXException, IOException {
        URL rules = GpxSchemaTest.class.getResource("gpx-1.1-restated.xsd");
        SchemaFactory schemas = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        schemas.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        schemas.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        Schema schema = schemas.newSchema(rules);
        schema.newValidator().validate(new StreamSource(new StringReader(document)));
    }

    private static String document(LonLat... places) {
        List<GpxContent.Waypoint> waypoints = new java.util.ArrayList<>();
        for (LonLat place : places) {
            waypoints.add(new GpxContent.Waypoint("P" + waypoints.size(), "M\u0101kara <1 & 2> \"left\"", place));
        }
        GpxContent content = new GpxContent(
                "BRN-01",
                "Stakes & places",
                Instant.parse("2027-09-01T08:00:00Z"),
                waypoints,
                List.of(new GpxContent.Route("WALK", "", waypoints)));
        return GpxWriter.document(content, PLACE).value().orElseThrow();
    }

    @Test
    void ourDocumentsKeepTheRulesOfTheFormat() throws Exception {
        validate(document(new LonLat(-20.8412345, 46.0212345), new LonLat(0, 0), new LonLat(174.7, -41.3)));
        validate(document());
    }

    @Test
    void theVeryEdgeOfTheMapKeepsThemToo() throws Exception {
        // Longitude 180 is not allowed: the format has it as -180. Tiny numbers must not turn into 1.0E-7.
        validate(document(new LonLat(180, 90), new LonLat(-180, -90), new LonLat(1e-7, -1e-7), new LonLat(1e-12, 0)));
        assertThat(document(new LonLat(180, 0))).contains("lon=\"-180").doesNotContain("lon=\"180");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lat=\"46.0212345\" | lat=\"91\"",
                "lat=\"46.0212345\" | lat=\"46,02\"",
                "lat=\"46.0212345\" | lat=\"4.6E1\"",
                "<name>P0</name> | <ele>3</ele><name>P0</name><ele>4</ele>",
                "version=\"1.1\" | version=\"1.0\"",
                "2027-09-01T08:00:00 | 2027-09-01 08:00:00"
            })
    void theRulesRefuseWhatIsWrong(String right, String wrong) {
        String document = document(new LonLat(-20.8412345, 46.0212345));
        assertThat(document).contains(right);
        assertThatThrownBy(() -> validate(document.replace(right, wrong))).isInstanceOf(SAXException.class);
    }
}
