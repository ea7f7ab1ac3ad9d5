package org.wadeplan.geo.reach;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.LineMeasure;

class PastStartDriftTest {

    /** Runs south, so that the east is true left. */
    private static final LineMeasure STREAM = new LineMeasure(
            new GeometryFactory().createLineString(new Coordinate[] {new Coordinate(0, 1000), new Coordinate(0, 0)}));

    private static PastStartDrift drift(double east, double north) {
        return PastStartDrift.of(new MetricPoint(east, north), STREAM, 600, 15);
    }

    @ParameterizedTest
    @CsvSource({
        "3, 412, '12.0 m upstream, 3.0 m off to the true left', false",
        "-2.5, 390, '10.0 m downstream, 2.5 m off to the true right', false",
        "0, 400, 'level with it, on the line', false",
        "0, 415, '15.0 m upstream, on the line', false",
        "0, 415.1, '15.1 m upstream, on the line', true",
        "15.1, 400, 'level with it, 15.1 m off to the true left', true"
    })
    void isSignedUpstreamAndNamesTheTrueSide(double east, double north, String words, boolean beyond) {
        assertThat(drift(east, north).words()).isEqualTo(words);
        assertThat(drift(east, north).beyondLimit()).isEqualTo(beyond);
    }

    @Test
    void upstreamIsPositive() {
        assertThat(drift(0, 412).alongM()).isEqualTo(12);
        assertThat(drift(0, 390).alongM()).isEqualTo(-10);
    }
}
