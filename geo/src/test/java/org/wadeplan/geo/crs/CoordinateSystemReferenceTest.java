package org.wadeplan.geo.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reference.ReferenceTable;

class CoordinateSystemReferenceTest {

    private static final SourcePlace PLACE = SourcePlace.file("round.json");

    static List<ReferenceTable.Row> points() {
        return ReferenceTable.rows("crs/points.csv");
    }

    static List<ReferenceTable.Row> geodesics() {
        return ReferenceTable.rows("crs/geodesics.csv");
    }

    @ParameterizedTest
    @MethodSource("points")
    void degreesBecomeTheMetresOfTheReference(ReferenceTable.Row row) {
        CoordinateSystem system =
                CoordinateSystem.named(row.text("to"), PLACE).value().orElseThrow();
        Coordinate at = system.from(row.text("from"), PLACE)
                .value()
                .orElseThrow()
                .apply(new GeometryFactory().createPoint(new Coordinate(row.number("lon_deg"), row.number("lat_deg"))))
                .getCoordinate();

        assertThat(at.x).isEqualTo(row.number("east_m"), within(row.number("tolerance_m")));
        assertThat(at.y).isEqualTo(row.number("north_m"), within(row.number("tolerance_m")));
    }

    @ParameterizedTest
    @MethodSource("points")
    void metresComeBackFromDegreesWithinACentimetre(ReferenceTable.Row row) {
        CoordinateSystem system =
                CoordinateSystem.named(row.text("to"), PLACE).value().orElseThrow();
        MetricPoint point = new MetricPoint(row.number("east_m"), row.number("north_m"));

        assertThat(system.toMetric(system.toLonLat(point)).distanceM(point)).isLessThan(0.01);
        if (row.text("from").equals("EPSG:4326")) {
            double toleranceDeg = row.number("tolerance_m") / 60_000;
            assertThat(system.toLonLat(point).lonDeg()).isEqualTo(row.number("lon_deg"), within(toleranceDeg));
            assertThat(system.toLonLat(point).latDeg()).isEqualTo(row.number("lat_deg"), within(toleranceDeg));
        }
    }

    @ParameterizedTest
    @MethodSource("geodesics")
    void theGeodesicsBehindTheGridScaleAreRight(ReferenceTable.Row row) {
        Geodesic ellipsoid =
                switch (row.text("ellipsoid")) {
                    case "GRS80" -> new Geodesic(6378137, 1 / 298.257222101);
                    case "BESSEL" -> new Geodesic(6377397.155, 1 / 299.1528128);
                    default -> Geodesic.WGS84;
                };
        GeodesicData line = ellipsoid.Inverse(
                row.number("lat1_deg"), row.number("lon1_deg"), row.number("lat2_deg"), row.number("lon2_deg"));

        assertThat(line.s12).isEqualTo(row.number("distance_m"), within(row.number("distance_tolerance_m")));
        assertThat((line.azi1 + 360) % 360)
                .isEqualTo(row.number("azimuth1_deg"), within(row.number("azimuth_tolerance_deg")));
    }
}
