package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.geo.io.GeoPackageTest.CHANGED;
import static org.wadeplan.geo.io.GeoPackageTest.wkt;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** The same data by way of GDAL (Debian's gdal-bin): it reads what we write, and we read what it writes. */
class GdalAgreementTest {

    private static final SourcePlace PLACE = SourcePlace.file("streams.gpkg");
    private static final CoordinateSystem UTM27 =
            CoordinateSystem.named("EPSG:32627", PLACE).value().orElseThrow();

    @TempDir
    Path folder;

    @BeforeEach
    void skipWithoutIt() {
        OtherPrograms.needed("ogr2ogr");
        OtherPrograms.needed("ogrinfo");
    }

    private static FeatureLayer layer(String name, Kind kind, Geometry... shapes) {
        List<Feature> features = new java.util.ArrayList<>();
        for (Geometry shape : shapes) {
            String number = Integer.toString(features.size() + 1);
            features.add(Feature.of(
                    number,
                    shape,
                    Map.of(
                            "code", Attribute.of("W\u00e4-" + number),
                            "depth", Attribute.of(0.25 * features.size()),
                            "rank", Attribute.of(-9L))));
        }
        features.add(new Feature(Integer.toString(features.size() + 1), Optional.empty(), Map.of()));
        LayerShape shape = new LayerShape(
                name,
                Optional.of(StatedSystem.code("EPSG:32627")),
                kind,
                List.of(Field.text("code"), Field.decimal("depth"), Field.whole("rank")));
        return new FeatureLayer(shape, features);
    }

    private static FeatureLayer streams() {
        return layer(
                "streams",
                Kind.LINESTRING,
                wkt("LINESTRING (512400 5096300, 512410.5 5096310.25)"),
                wkt("LINESTRING (512400 5096300, 512300 5096200, 512200 5096250)"));
    }

    private static FeatureLayer catchments() {
        return layer(
                "catchments",
                Kind.POLYGON,
                wkt("POLYGON ((512000 5096000, 513000 5096000, 513000 5097000, 512000 5097000, 512000 5096000),"
                        + " (512100 5096100, 512200 5096100, 512200 5096200, 512100 5096200, 512100 5096100))"));
    }

    private Path written(FeatureLayer... layers) throws Exception {
        Path file = folder.resolve("streams.gpkg");
        new GeoPackageWriter(UTM27, CHANGED).write(file, List.of(layers));
        return file;
    }

    @Test
    void gdalReadsEveryLayerThatWeWrite() throws Exception {
        String words = OtherPrograms.run(
                "ogrinfo", "-al", "-so", "-ro", written(streams(), catchments()).toString());

        assertThat(words)
                .contains("Layer name: streams", "Geometry: Line String", "Feature Count: 3")
                .contains("Layer name: catchments", "Geometry: Polygon", "Feature Count: 2")
                .contains("Extent: (512200.000000, 5096200.000000) - (512410.500000, 5096310.250000)")
                .contains("code: String", "depth: Real", "rank: Integer")
                .contains("ID[\"EPSG\",32627]")
                .doesNotContain("Warning", "ERROR");
    }

    @ParameterizedTest
    @CsvSource({
        "streams.shp, ESRI Shapefile, EPSG:32627",
        "out.gpkg, GPKG, EPSG:32627",
        "out.gpkg, GPKG, EPSG:4326",
        "out.gpkg, GPKG, EPSG:3857",
        "streams.shp, ESRI Shapefile, EPSG:4326",
        "streams.shp, ESRI Shapefile, EPSG:3035",
        "streams.shp, ESRI Shapefile, ESRI:102003",
        "streams.geojson, GeoJSON, EPSG:4326",
        "streams.geojson, GeoJSON, EPSG:32628"
    })
    void weReadLinesThatGdalHasConverted(String name, String format, String system) throws Exception {
        Path file = folder.resolve(name);
        OtherPrograms.run(
                "ogr2ogr",
                "-f",
                format,
                "-t_srs",
                system,
                file.toString(),
                written(streams()).toString(),
                "streams");

        Checked<FeatureLayer> answer = MapFile.read(file, "streams", SourcePlace.file(name), UTM27);

        assertThat(answer.hasErrors()).as(answer.problems().toString()).isFalse();
        List<Feature> expected = streams().features();
        List<Feature> found = answer.value().orElseThrow().features();
        assertThat(found).hasSameSizeAs(expected);
        for (int i = 0; i < expected.size(); i++) {
            assertThat(found.get(i).text("CODE")).isEqualTo(expected.get(i).text("code"));
            assertThat(found.get(i).attribute("rank")).isEqualTo(expected.get(i).attribute("rank"));
            assertThat(found.get(i).geometry().isPresent())
                    .isEqualTo(expected.get(i).geometry().isPresent());
            if (expected.get(i).geometry().isPresent()) {
                assertThat(found.get(i)
                                .geometry()
                                .orElseThrow()
                                .equalsExact(expected.get(i).geometry().orElseThrow(), 0.05))
                        .as(found.get(i) + " after " + system)
                        .isTrue();
            }
        }
    }

    @Test
    void weReadAreasWithHolesThatGdalHasConverted() throws Exception {
        Path file = folder.resolve("catchments.shp");
        OtherPrograms.run("ogr2ogr", file.toString(), written(catchments()).toString(), "catchments");

        Checked<FeatureLayer> answer = new ShapefileReader(file, SourcePlace.file("catchments.shp")).read();

        assertThat(answer.problems()).extracting(Problem::sentence).isEmpty();
        Geometry found =
                answer.value().orElseThrow().features().get(0).geometry().orElseThrow();
        assertThat(found.equalsTopo(catchments().features().get(0).geometry().orElseThrow()))
                .isTrue();
        assertThat(found.getArea()).isEqualTo(990_000);
    }

    @Test
    void weUseTheSpatialIndexThatGdalMakes() throws Exception {
        Path file = folder.resolve("out.gpkg");
        OtherPrograms.run(
                "ogr2ogr", "-f", "GPKG", file.toString(), written(streams()).toString(), "streams");
        List<String> near = new java.util.ArrayList<>();

        Checked<LayerShape> answer = new GeoPackageReader(file, PLACE)
                .each(
                        "streams",
                        new org.locationtech.jts.geom.Envelope(512150, 512250, 5096150, 5096300),
                        feature -> near.add(feature.id()));

        assertThat(near).containsExactly("2");
        assertThat(answer.problems()).extracting(Problem::code).containsExactly("box-by-index");
    }
}
