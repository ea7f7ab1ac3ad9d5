package org.wadeplan.geo.crs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reference.ReferenceTable;

/** Systems that a file describes instead of giving a code: their places against another program. */
class DefinitionReferenceTest {

    private static final SourcePlace PLACE = SourcePlace.file("streams.shp");

    static List<ReferenceTable.Row> definitions() {
        return ReferenceTable.rows("crs/definitions.csv");
    }

    static StatedSystem stated(String id) throws IOException {
        try (InputStream in =
                DefinitionReferenceTest.class.getResourceAsStream("/reference/crs/definitions/" + id + ".txt")) {
            assertThat(in).as("a definition for " + id).isNotNull();
            return StatedSystem.definition(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @ParameterizedTest
    @MethodSource("definitions")
    void aDescribedSystemPutsAPlaceWhereAnotherProgramDoes(ReferenceTable.Row row) throws IOException {
        LonLat expected = new LonLat(row.number("lon_deg"), row.number("lat_deg"));
        CoordinateSystem round = CoordinateSystem.named(UtmZone.at(expected).code(), PLACE)
                .value()
                .orElseThrow();

        Checked<Reprojection> way = round.from(stated(row.text("id")), PLACE);

        Coordinate at = way.value()
                .orElseThrow(() -> new AssertionError(way.problems().toString()))
                .apply(new GeometryFactory().createPoint(new Coordinate(row.number("east"), row.number("north"))))
                .getCoordinate();
        LonLat found = round.toLonLat(new MetricPoint(at.x, at.y));
        double offM = Geodesic.WGS84.Inverse(expected.latDeg(), expected.lonDeg(), found.latDeg(), found.lonDeg()).s12;
        assertThat(offM).as("metres off; " + way.problems()).isLessThan(row.number("tolerance_m"));
    }
}
