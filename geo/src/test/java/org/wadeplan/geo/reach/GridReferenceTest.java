package org.wadeplan.geo.reach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;

class GridReferenceTest {

    @Test
    void givesAPlaceInThreeForms() {
        GridReference depot =
                new GridReference(new MetricPoint(512400.4, 5096299.6), new LonLat(-20.8398, 46.02016), 9.2);

        assertThat(depot.eastNorth()).isEqualTo("E 512400 N 5096300 \u00b1 10 m");
        assertThat(depot.decimalDegrees()).isEqualTo("46.02016\u00b0 N, 20.83980\u00b0 W");
        assertThat(depot.degreesMinutes()).isEqualTo("46\u00b0 01.210\u2032 N, 020\u00b0 50.388\u2032 W");
    }

    @Test
    void minutesNeverReadSixty() {
        assertThat(new GridReference(new MetricPoint(0, 0), new LonLat(174.9999999, -41.9999999), 0).degreesMinutes())
                .isEqualTo("42\u00b0 00.000\u2032 S, 175\u00b0 00.000\u2032 E");
    }

    @Test
    void doesNotFollowTheMachinesLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(new GridReference(new MetricPoint(1, 2), new LonLat(1.5, 2.5), 0).decimalDegrees())
                    .isEqualTo("2.50000\u00b0 N, 1.50000\u00b0 E");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aMappedReachIsProbablyLongerOnTheGround() {
        // Source: nafm.10793, mapped lines 11.1 % short: 150 / (1 - 0.111) = 168.7 m.
        assertThat(GroundLength.of(150).words()).isEqualTo("about 150\u2013169 m on the ground; lay it out by tape");
    }
}
