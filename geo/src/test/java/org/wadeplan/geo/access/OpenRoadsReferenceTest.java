package org.wadeplan.geo.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.Reprojection;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.terrain.Ground;

/**
 * Against open data (OpenStreetMap, ODbL 1.0), which is no part of the project: skipped where it is absent. Expected figures
 * were computed with PostGIS 3.3.2 and GEOS 3.11.1 on the same file in EPSG:32632.
 */
class OpenRoadsReferenceTest {

    private static final Path FILE = Path.of("..", "..", "shared", "data", "osm_north_bayreuth.gpkg");
    private static final CoordinateSystem UTM32 = CoordinateSystem.named("EPSG:32632", SourcePlace.file("round.json"))
            .value()
            .orElseThrow();

    private static LineSet lines(String layerName) {
        assumeTrue(
                Files.isRegularFile(FILE),
                "skipped: the open data file osm_north_bayreuth.gpkg is not beside the project, in ../shared/data");
        SourcePlace place = SourcePlace.file("osm_north_bayreuth.gpkg");
        FeatureLayer layer =
                new GeoPackageReader(FILE, place).read(layerName).value().orElseThrow();
        Reprojection move =
                UTM32.from(layer.shape().crs().orElseThrow(), place).value().orElseThrow();
        LineSetBuilder lines = new LineSetBuilder();
        for (Feature feature : layer.features()) {
            Geometry shape = move.apply(feature.geometry().orElseThrow());
            for (int part = 0; part < shape.getNumGeometries(); part++) {
                lines.add(feature.text("osm_id").orElse(""), (LineString) shape.getGeometryN(part));
            }
        }
        return lines.build();
    }

    private static Roads roads() {
        LineSet lines = lines("roads");
        return new Roads(lines, Collections.nCopies(lines.lineCount(), ""));
    }

    private static double share(List<Double> distances, double withinM) {
        return 100.0
                * distances.stream().filter(distance -> distance <= withinM).count()
                / distances.size();
    }

    @Test
    void distancesFromWholeReachesToRoadsAreThoseOfAnotherProgram() {
        LineSet streams = lines("waterways");
        AccessPlanner planner = new AccessPlanner(roads(), streams, Ground.UNKNOWN, List.of(), 5000);
        List<Double> distances = new ArrayList<>();
        for (int line = 0; line < streams.lineCount(); line++) {
            for (int reach = 0; reach < (int) (streams.lengthM(line) / 150); reach++) {
                distances.add(planner.toPlace(line, reach * 150 + 75.0)
                        .walkIn()
                        .orElseThrow()
                        .lengthM());
            }
        }
        Collections.sort(distances);

        assertThat(distances).hasSize(459);
        assertThat(distances.get(229)).isEqualTo(87.1, within(0.05));
        assertThat(share(distances, 50)).isEqualTo(30.1, within(0.05));
        assertThat(share(distances, 200)).isEqualTo(82.4, within(0.05));
        assertThat(share(distances, 500)).isEqualTo(93.0, within(0.05));
        assertThat(distances.get(458)).isEqualTo(1619, within(0.5));
    }

    @Test
    void roadsMeetWaterwaysAsOftenAsAnotherProgramFinds() {
        assertThat(RoadCrossings.of(roads(), lines("waterways"))).hasSize(123);
    }
}
