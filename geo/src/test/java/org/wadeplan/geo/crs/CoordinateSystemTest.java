package org.wadeplan.geo.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class CoordinateSystemTest {

    private static final SourcePlace PLACE = SourcePlace.file("round.json");

    static CoordinateSystem system(String code) {
        return CoordinateSystem.named(code, PLACE).value().orElseThrow();
    }

    @Test
    void saysItselfInWordsWithItsDatum() {
        assertThat(system("EPSG:32627").words()).isEqualTo("WGS 84 / UTM zone 27N (EPSG:32627), metres, datum WGS 84");
        assertThat(system("epsg:2193").words())
                .startsWith("NZGD2000 / New Zealand Transverse Mercator 2000 (EPSG:2193)");
        assertThat(system("EPSG:27700").datum()).isEqualTo("OSGB36");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            EPSG:999999 | crs-unknown           | is not a coordinate system that is known here
            UTM 27      | crs-unknown           | is not a coordinate system that is known here
            ''          | crs-unknown           | is not a coordinate system that is known here
            EPSG:4326   | crs-not-for-measuring | has coordinates in degrees
            EPSG:3857   | crs-not-for-measuring | stretches lengths
            EPSG:3395   | crs-not-for-measuring | stretches lengths
            EPSG:2264   | crs-not-for-measuring | not in metres
            """)
    void refusesWhatCannotMeasure(String code, String problem, String words) {
        Checked<CoordinateSystem> answer = CoordinateSystem.named(code, PLACE);

        assertThat(answer.value()).isEmpty();
        assertThat(answer.problems()).extracting(Problem::code).containsExactly(problem);
        assertThat(answer.problems().get(0).sentence()).contains(words).contains("Do: ");
    }

    @Test
    void theDepotOfTheDemoLiesWhereTheScenarioSays() {
        // Source: demo scenario section 4 (invented place): 46.02016 N, 20.83980 W.
        LonLat depot = system("EPSG:32627").toLonLat(new MetricPoint(512400, 5096300));

        assertThat(depot.latDeg()).isEqualTo(46.02016, within(0.000005));
        assertThat(depot.lonDeg()).isEqualTo(-20.83980, within(0.000005));
    }

    @Test
    void eastComesFirstThoughTheAuthorityListsNorthFirst() {
        MetricPoint wellington = system("EPSG:2193").toMetric(new LonLat(174.77722222, -41.28888889));

        assertThat(wellington.eastM()).isEqualTo(1748815.73, within(0.01));
    }

    @Test
    void knowsPlacesOutsideItsArea() {
        CoordinateSystem utm27 = system("EPSG:32627");

        assertThat(utm27.inArea(new MetricPoint(512400, 5096300))).isTrue();
        assertThat(utm27.inArea(new MetricPoint(5096300, 512400))).isFalse();
        assertThat(utm27.inArea(new MetricPoint(-20.8, 46.0))).isFalse();
        assertThat(utm27.inArea(new LonLat(174.8, -41.3))).isFalse();
    }

    @Test
    void scaleOnTheCentralMeridianIsThatOfUtm() {
        // Source: UTM definition, k0 = 0.9996.
        assertThat(system("EPSG:32627").gridScaleAt(new MetricPoint(500000, 5096300)))
                .isEqualTo(0.9996, within(1e-7));
    }

    @Test
    void carriesADefinitionOnOneLine() {
        assertThat(system("EPSG:32627").definition())
                .startsWith("PROJCS[\"WGS 84 / UTM zone 27N\"")
                .doesNotContain("\n");
    }
}
