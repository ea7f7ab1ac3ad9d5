package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.Field;
import org.wadeplan.geo.io.GeoPackageWriter;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.CatchmentArea;

/** Catchments against the sites, with outlines drawn here. */
class MapLayersTest {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    @TempDir
    Path temp;

    private static CoordinateSystem system(String code) {
        return CoordinateSystem.named(code, SourcePlace.file("test")).value().orElseThrow();
    }

    private static Geometry square(double eastM, double northM, double sideM) {
        return SHAPES.toGeometry(new Envelope(eastM, eastM + sideM, northM, northM + sideM));
    }

    private static Map<String, Attribute> called(String code) {
        return Map.of("code", Attribute.of(code), "name", Attribute.of(code));
    }

    private BrokenRound withCatchments(String crs, Feature... features) throws DiskException {
        BrokenRound round = BrokenRound.in(temp).without("catchments.gpkg");
        LayerShape shape = new LayerShape(
                "catchments",
                Optional.of(StatedSystem.code(crs)),
                LayerShape.Kind.POLYGON,
                List.of(Field.text("code"), Field.text("name")));
        new GeoPackageWriter(system(crs), Instant.EPOCH)
                .write(round.file("catchments.gpkg"), List.of(new FeatureLayer(shape, List.of(features))));
        return round;
    }

    @Test
    void aRoundWithoutOutlinesOfCatchmentsAndLandIsReadAndSaysWhatWasNotChecked() {
        BrokenRound round = BrokenRound.in(temp)
                .without("catchments.gpkg")
                .without("parcels.gpkg")
                .with("round.json", ", \"catchments\": \"catchments.gpkg\", \"parcels\": \"parcels.gpkg\"", "");

        assertThat(round.sentences())
                .anyMatch(sentence -> sentence.startsWith("WARNING no-catchments catchments.gpkg: "))
                .anyMatch(sentence -> sentence.startsWith("WARNING no-parcels parcels.gpkg: the round has no parcels of"
                        + " land: consent was checked for no stretch of stream and no walk"))
                .noneMatch(sentence -> sentence.startsWith("ERROR"));
    }

    @Test
    void aSiteOutsideItsCatchmentIsAWarning() throws DiskException {
        BrokenRound round = withCatchments(
                "EPSG:32627",
                Feature.of("1", square(503000, 5109000, 1000), called("BRN")),
                Feature.of("2", square(400000, 5000000, 300000), called("HSK")),
                Feature.of("3", square(400000, 5000000, 300000), called("TOL")),
                Feature.of("4", square(400000, 5000000, 300000), called("OUN")),
                Feature.of("5", square(400000, 5000000, 300000), called("PEL")));
        String rest = ", column stream: the site lies outside the outline of the catchment BRN. Allowed: a place inside"
                + " it. Do: check the coordinates, the stream and the outline: the permit goes by the catchment";
        assertThat(round.sentences().stream()
                        .filter(sentence -> sentence.contains("site-outside-catchment"))
                        .toList())
                .containsExactly(
                        "WARNING site-outside-catchment sites.csv, line 3 (BRN-02)" + rest,
                        "WARNING site-outside-catchment sites.csv, line 4 (BRN-03)" + rest);
    }

    @Test
    void anOutlineInAnotherSystemIsBroughtIntoTheRounds() throws DiskException {
        CoordinateSystem neighbour = system("EPSG:32626");
        CoordinateSystem ours = system("EPSG:32627");
        MetricPoint corner = neighbour.toMetric(ours.toLonLat(new MetricPoint(503150, 5109420)));
        BrokenRound round = withCatchments(
                "EPSG:32626", Feature.of("1", square(corner.eastM(), corner.northM(), 1000), called("BRN")));
        CatchmentArea area =
                round.read().value().orElseThrow().terrain().catchments().get(0);
        assertThat(area.area().distance(square(503150, 5109420, 0.001))).isLessThan(0.01);
    }

    @Test
    void aFeatureWithoutACodeIsAnError() throws DiskException {
        assertThat(withCatchments(
                                "EPSG:32627",
                                Feature.of("1", square(503000, 5109000, 1000), Map.of("name", Attribute.of("Brannet"))))
                        .sentences())
                .containsExactly("ERROR feature-broken catchments.gpkg, feature 1: the feature has no code. Allowed: a"
                        + " code and an outline. Do: mend it in a map program");
    }
}
