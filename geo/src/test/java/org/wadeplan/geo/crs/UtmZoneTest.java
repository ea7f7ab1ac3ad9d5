package org.wadeplan.geo.crs;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.geo.problem.SourcePlace;

class UtmZoneTest {

    @ParameterizedTest
    @CsvSource({
        // Source: NGA.SIG.0012, 2014, section 7: zones of 6 degrees from 180 west.
        "-180, 1, EPSG:32601",
        "180, -1, EPSG:32760",
        "179.99, -17, EPSG:32760",
        "-79.03, 35.92, EPSG:32617",
        "-122.8, 38.1, EPSG:32610",
        "0, 0, EPSG:32631",
        "5.99999, 47, EPSG:32631",
        "6, 47, EPSG:32632",
        "5, 60, EPSG:32631",
        "9, 78, EPSG:32632"
    })
    void aPlaceLiesInItsZone(double lonDeg, double latDeg, String code) {
        LonLat place = new LonLat(lonDeg, latDeg);

        assertThat(UtmZone.at(place).code()).isEqualTo(code);
        assertThat(CoordinateSystem.named(code, SourcePlace.file("round.json"))
                        .value()
                        .orElseThrow()
                        .inArea(place))
                .isTrue();
    }
}
