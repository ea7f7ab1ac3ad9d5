package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wadeplan.geo.io.GeoPackageTest.CHANGED;
import static org.wadeplan.geo.io.GeoPackageTest.wkt;
import static org.wadeplan.geo.io.ShapefileBytes.parts;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class MapFileTest {

    private static final SourcePlace PLACE = SourcePlace.file("rivers.gpkg");

    @TempDir
    Path folder;

    private static CoordinateSystem system(String code) {
        return CoordinateSystem.named(code, PLACE).value().orElseThrow();
    }

    private static final CoordinateSystem UTM27 = system("EPSG:32627");

    /** A layer as an agency has it: its own columns, one line of each kind. */
    private Path agency(String... layers) throws Exception {
        List<FeatureLayer> all = new ArrayList<>();
        for (String name : layers) {
            LayerShape shape = new LayerShape(
                    name,
                    Optional.of(StatedSystem.code("EPSG:32627")),
                    Kind.LINESTRING,
                    List.of(
                            Field.whole("COMID"),
                            Field.text("GNIS_NAME"),
                            Field.whole("FType"),
                            Field.whole("StreamOrde")));
            all.add(new FeatureLayer(
                    shape,
                    List.of(
                            line(
                                    "1",
                                    512400,
                                    Map.of(
                                            "COMID",
                                            Attribute.of(71L),
                                            "GNIS_NAME",
                                            Attribute.of("Brannet"),
                                            "FType",
                                            Attribute.of(460L),
                                            "StreamOrde",
                                            Attribute.of(2L))),
                            line(
                                    "2",
                                    512500,
                                    Map.of(
                                            "COMID",
                                            Attribute.of(72L),
                                            "FType",
                                            Attribute.of(428L),
                                            "StreamOrde",
                                            Attribute.of(1L))),
                            line("3", 512600, Map.of("COMID", Attribute.of(73L), "FType", Attribute.of(558L))))));
        }
        Path file = folder.resolve("rivers.gpkg");
        new GeoPackageWriter(UTM27, CHANGED).write(file, all);
        return file;
    }

    private static Feature line(String id, double eastM, Map<String, Attribute> attributes) {
        return Feature.of(id, wkt("LINESTRING (" + eastM + " 5096300, " + (eastM + 10) + " 5096310)"), attributes);
    }

    private static LayerQuery query(ColumnMapping mapping, String filter) {
        return new LayerQuery(
                "streams",
                Optional.empty(),
                mapping,
                filter.isEmpty() ? Optional.empty() : Optional.of(filter),
                Optional.of("code"),
                SourcePlace.file("round.json"));
    }

    private static ColumnMapping columns(Map<String, String> columns) {
        return new ColumnMapping(columns, Map.of(), Map.of(), Optional.empty());
    }

    private static List<String> sentences(Checked<?> answer) {
        return answer.problems().stream().map(Problem::sentence).toList();
    }

    @Test
    void callsAnAgencysColumnsByOurNames() throws Exception {
        ColumnMapping mapping = new ColumnMapping(
                Map.of("code", "comid", "name", "gnis_name", "kind", "FTYPE"),
                Map.of("catchment", "NHC"),
                Map.of("460", "stream", "428", "pipe"),
                Optional.empty());

        Checked<FeatureLayer> answer = MapFile.read(agency("flow"), query(mapping, ""), PLACE, UTM27);

        assertThat(answer.value().orElseThrow().features())
                .extracting(feature -> feature.text("code").orElse("-") + " "
                        + feature.text("name").orElse("-") + " "
                        + feature.text("kind").orElse("-") + " "
                        + feature.text("catchment").orElse("-") + " "
                        + feature.text("streamorde").orElse("-"))
                .containsExactly("71 Brannet stream NHC 2", "72 - pipe NHC 1", "73 - 558 NHC -");
        assertThat(sentences(answer))
                .containsExactly(
                        "rivers.gpkg, column kind: \"558\" (1 feature) is no kind of line known here. Allowed: stream, ditch,"
                                + " canal, pipe, culvert, lake, tidal, coast. Do: say what it means: \"kindWords\":"
                                + " {\"558\": \"stream\"} under mappings.streams in round.json",
                        "rivers.gpkg: no layer is called streams; its only layer, flow, was read. Do: nothing if that is"
                                + " right");
    }

    @Test
    void refusesAMappingOfAColumnThatIsNotThereWithThoseThatAre() throws Exception {
        Checked<FeatureLayer> answer =
                MapFile.read(agency("streams"), query(columns(Map.of("code", "REACHCODE")), ""), PLACE, UTM27);

        assertThat(answer.value()).isEmpty();
        assertThat(sentences(answer))
                .containsExactly(
                        "round.json, mappings.streams: the layer streams has no column \"REACHCODE\", which code is"
                                + " to be read from. Allowed: one of its columns COMID, GNIS_NAME, FType, StreamOrde. Do: write the"
                                + " name of the column that holds it");
    }

    @Test
    void theIdOfAFeatureStandsInForItsCode() throws Exception {
        Checked<FeatureLayer> answer = MapFile.read(agency("streams"), query(ColumnMapping.NONE, ""), PLACE, UTM27);

        assertThat(answer.value().orElseThrow().features())
                .extracting(feature -> feature.text("code").orElse("-"))
                .containsExactly("1", "2", "3");
        assertThat(sentences(answer))
                .containsExactly(
                        "rivers.gpkg: no column holds the code; the file's own id of each feature stands in for it."
                                + " Do: nothing if that is right; else name the column under mappings.streams in round.json");
    }

    @Test
    void countsWhatAFilterLeavesOut() throws Exception {
        ColumnMapping mapping = columns(Map.of("code", "COMID"));

        Checked<FeatureLayer> answer =
                MapFile.read(agency("streams"), query(mapping, "NOT (streamorde < 2)"), PLACE, UTM27);

        assertThat(answer.value().orElseThrow().features())
                .extracting(feature -> feature.text("code").orElse("-"))
                .containsExactly("71");
        assertThat(sentences(answer))
                .containsExactly(
                        "round.json, filters.streams: the filter left out 2 of 3 features, 1 of them because a value"
                                + " asked for is not known");
        assertThat(sentences(MapFile.read(agency("streams"), query(mapping, "COMID = 0"), PLACE, UTM27)))
                .containsExactly(
                        "round.json, filters.streams: the filter left out 3 of 3 features. Do: check the words and"
                                + " numbers in it");
    }

    @Test
    void takesTheLayerCalledAsThePartAndAsksWhereNoneIs() throws Exception {
        LayerQuery streams = query(columns(Map.of("code", "COMID")), "");

        assertThat(MapFile.read(agency("lakes", "STREAMS"), streams, PLACE, UTM27)
                        .value()
                        .orElseThrow()
                        .shape()
                        .name())
                .isEqualTo("STREAMS");
        assertThat(sentences(MapFile.read(agency("flow", "lakes"), streams, PLACE, UTM27)))
                .containsExactly(
                        "rivers.gpkg: none of its layers is called streams. Allowed: one of flow, lakes. Do: name"
                                + " the layer in round.json: \"files\": {\"streams\": \"rivers.gpkg#flow\"}");
    }

    @Test
    void aSystemWithoutACodeIsReadByItsDescription() throws Exception {
        Path file = agency("streams");
        PlainSql.change(
                file,
                "UPDATE gpkg_spatial_ref_sys SET organization = 'NONE', srs_name = 'ours', definition ="
                        + " 'PROJCS[\"ours\",GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],"
                        + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]],PROJECTION[\"Transverse_Mercator\"],"
                        + "PARAMETER[\"latitude_of_origin\",0],PARAMETER[\"central_meridian\",-21],"
                        + "PARAMETER[\"scale_factor\",0.9996],PARAMETER[\"false_easting\",500000],"
                        + "PARAMETER[\"false_northing\",0],UNIT[\"metre\",1]]' WHERE srs_id = 32627");

        Checked<FeatureLayer> answer = MapFile.read(file, query(columns(Map.of("code", "COMID")), ""), PLACE, UTM27);

        assertThat(sentences(answer))
                .containsExactly(
                        "rivers.gpkg: its coordinates are in \"ours\" (no code); they were brought into WGS 84 / UTM"
                                + " zone 27N (EPSG:32627), metres, datum WGS 84. Do: nothing");
        Coordinate first = answer.value()
                .orElseThrow()
                .features()
                .get(0)
                .geometry()
                .orElseThrow()
                .getCoordinate();
        assertThat(first.distance(new Coordinate(512400, 5096300))).isLessThan(0.001);
    }

    @Test
    void theNewerFormInItsOwnColumnIsReadWhereTheOlderIsUndefined() throws Exception {
        Path file = agency("streams");
        PlainSql.change(file, "ALTER TABLE gpkg_spatial_ref_sys ADD COLUMN definition_12_063 TEXT DEFAULT 'undefined'");
        PlainSql.change(
                file,
                "UPDATE gpkg_spatial_ref_sys SET organization = 'NONE', definition = 'undefined',"
                        + " definition_12_063 = 'PROJCRS[\"ours\",BASEGEOGCRS[\"WGS 84\",DATUM[\"World Geodetic System 1984\","
                        + "ELLIPSOID[\"WGS 84\",6378137,298.257223563,LENGTHUNIT[\"metre\",1]]]],CONVERSION[\"c\","
                        + "METHOD[\"Transverse Mercator\"],PARAMETER[\"Latitude of natural origin\",0,ANGLEUNIT[\"degree\","
                        + "0.0174532925199433]],PARAMETER[\"Longitude of natural origin\",-21,ANGLEUNIT[\"degree\","
                        + "0.0174532925199433]],PARAMETER[\"Scale factor at natural origin\",0.9996],PARAMETER[\"False easting\","
                        + "500000,LENGTHUNIT[\"metre\",1]],PARAMETER[\"False northing\",0,LENGTHUNIT[\"metre\",1]]],"
                        + "CS[Cartesian,2],AXIS[\"(N)\",north,ORDER[1]],AXIS[\"(E)\",east,ORDER[2]],LENGTHUNIT[\"metre\",1]]'"
                        + " WHERE srs_id = 32627");

        Geometry first = MapFile.read(file, query(columns(Map.of("code", "COMID")), ""), PLACE, UTM27)
                .value()
                .orElseThrow()
                .features()
                .get(0)
                .geometry()
                .orElseThrow();
        assertThat(first.getCoordinate().distance(new Coordinate(512400, 5096300)))
                .isLessThan(0.001);
    }

    @Test
    void aSystemThatIsNotUnderstoodIsNamedWithTheWayOut() throws Exception {
        Path file = agency("streams");
        PlainSql.change(
                file,
                "UPDATE gpkg_spatial_ref_sys SET organization = 'NONE', definition ="
                        + " 'LOCAL_CS[\"Mine grid\",UNIT[\"metre\",1]]' WHERE srs_id = 32627");
        assertThat(sentences(MapFile.read(file, query(columns(Map.of("code", "COMID")), ""), PLACE, UTM27)))
                .contains(
                        "rivers.gpkg: the file describes its coordinate system, \"Mine grid\" (no code), in a way that is"
                                + " not understood here. Allowed: a projected or geographic system, best one with an EPSG code. Do:"
                                + " name its code under mappings in round.json (\"crs\"), or save the layer again in EPSG:32627");

        ColumnMapping saying = new ColumnMapping(
                Map.of("code", "COMID"), Map.of(), Map.of(), Optional.of(StatedSystem.code("EPSG:32627")));
        Checked<FeatureLayer> said = MapFile.read(file, query(saying, ""), PLACE, UTM27);
        assertThat(said.value().orElseThrow().features()).hasSize(3);
        assertThat(sentences(said))
                .containsExactly(
                        "rivers.gpkg: its coordinates were read as EPSG:32627, as round.json says; the file says"
                                + " \"Mine grid\" (no code). Do: nothing if that is right");
    }

    @Test
    void aDatumWithoutAKnownShiftIsRefused() throws Exception {
        Path file = agency("streams");
        PlainSql.change(
                file,
                "UPDATE gpkg_spatial_ref_sys SET organization = 'NONE', definition ="
                        + " 'GEOGCS[\"Old island\",DATUM[\"Old island 1912\",SPHEROID[\"Clarke 1880\",6378249.145,293.465]],"
                        + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]]' WHERE srs_id = 32627");
        assertThat(sentences(MapFile.read(file, query(columns(Map.of("code", "COMID")), ""), PLACE, UTM27)))
                .contains(
                        "rivers.gpkg: no datum shift is known from \"Old island\" (no code) on the ellipsoid Clarke 1880:"
                                + " places could lie hundreds of metres off. Allowed: a system on a datum with a known shift to WGS"
                                + " 84. Do: name the system's EPSG code under mappings in round.json (\"crs\"), or save the layer"
                                + " again in EPSG:32627");
    }

    @Test
    void anUndefinedSystemIsRefused() throws Exception {
        Path file = agency("streams");
        PlainSql.change(file, "UPDATE gpkg_geometry_columns SET srs_id = -1");
        assertThat(sentences(MapFile.read(file, query(columns(Map.of("code", "COMID")), ""), PLACE, UTM27)))
                .containsExactly(
                        "rivers.gpkg: the layer does not say which coordinate system it is in. Allowed: a layer with"
                                + " its coordinate system, best the round's EPSG:32627. Do: ask whoever made it and name the code in"
                                + " round.json, \"mappings\": {\"streams\": {\"crs\": \"EPSG:...\"}}, or set it in the map program"
                                + " and save it again");
    }

    private Checked<FeatureLayer> shapefile(String prj, CoordinateSystem round, double... line) throws Exception {
        new ShapefileBytes(3)
                .column("CODE C 5 0")
                .record(parts(3, line))
                .row(" ", "BRN")
                .write(folder);
        if (prj.isEmpty()) {
            Files.delete(folder.resolve("streams.prj"));
        } else {
            Files.writeString(folder.resolve("streams.prj"), prj);
        }
        return MapFile.read(
                folder.resolve("streams.shp"), query(ColumnMapping.NONE, ""), SourcePlace.file("streams.shp"), round);
    }

    private static final String DEGREES =
            "GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",6378137.0,"
                    + "298.257223563]],PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]]";

    @Test
    void aShapefileWithoutAPrjIsRefused() throws Exception {
        assertThat(sentences(shapefile("", UTM27, 512400, 5096300, 512410, 5096310)))
                .containsExactly(
                        "streams.shp: nothing says which coordinate system the shapefile is in: there is no .prj"
                                + " beside it. Allowed: a layer with its coordinate system, best the round's EPSG:32627. Do: ask"
                                + " whoever made it and name the code in round.json, \"mappings\": {\"streams\": {\"crs\":"
                                + " \"EPSG:...\"}}, or set it in the map program and save it again");
    }

    @Test
    void degreesAreMeasuredOnlyInTheRoundsSystemWhichIsNamed() throws Exception {
        Checked<FeatureLayer> answer = shapefile(DEGREES, UTM27, -20.84, 46.02, -20.84, 46.03);

        assertThat(sentences(answer))
                .containsExactly("streams.shp: its coordinates are degrees of EPSG:4326, in which nothing"
                        + " can be measured; lengths and distances are measured in WGS 84 / UTM zone 27N (EPSG:32627),"
                        + " metres, datum WGS 84. Do: nothing");
        // One hundredth of a degree of latitude is 1111.5 m at 46 degrees (meridian arc on WGS 84), times the grid's
        // 0.9996.
        assertThat(answer.value()
                        .orElseThrow()
                        .features()
                        .get(0)
                        .geometry()
                        .orElseThrow()
                        .getLength())
                .isEqualTo(1111.1, within(0.3));
    }

    @Test
    void swappedAxesAreSeen() throws Exception {
        Checked<FeatureLayer> answer = shapefile(DEGREES, UTM27, 46.02, -20.84, 46.03, -20.84);

        assertThat(answer.value().orElseThrow().features()).isEmpty();
        assertThat(sentences(answer).get(0))
                .isEqualTo(
                        "streams.shp, feature 1: it begins at 46.02, -20.84, outside the area of WGS 84 / UTM zone 27N"
                                + " (EPSG:32627), metres, datum WGS 84; the other way round it would lie inside. Allowed: places in"
                                + " the round's area, longitude or easting first. Do: swap the two coordinates in the program that"
                                + " wrote the file");
    }

    @Test
    void aLineAcrossThe180thMeridianStaysInOnePieceWhereTheRoundReachesAcrossIt() throws Exception {
        double[] across = {179.995, -17, -179.995, -17};
        Checked<FeatureLayer> utm = shapefile(DEGREES, system("EPSG:32701"), across);

        assertThat(utm.hasErrors()).isFalse();
        // 0.01 degrees of longitude at 17 degrees south: 1064.9 m on the ground, times a grid scale of about 1.001.
        assertThat(utm.value()
                        .orElseThrow()
                        .features()
                        .get(0)
                        .geometry()
                        .orElseThrow()
                        .getLength())
                .isEqualTo(1066, within(2.0));
    }

    @Test
    void aBoxGivesTheSameFeaturesWithAndWithoutASpatialIndex() throws Exception {
        Path file = agency("streams");
        Envelope box = new Envelope(512450, 512550, 5096000, 5097000);
        List<String> scanned = new ArrayList<>();
        Checked<LayerShape> scan =
                new GeoPackageReader(file, PLACE).each("streams", box, feature -> scanned.add(feature.id()));
        PlainSql.change(file, "CREATE VIRTUAL TABLE rtree_streams_geom USING rtree(id, minx, maxx, miny, maxy)");
        for (int fid = 1; fid <= 3; fid++) {
            int east = 512300 + 100 * fid;
            PlainSql.change(
                    file,
                    "INSERT INTO rtree_streams_geom VALUES (" + fid + "," + east + "," + (east + 10)
                            + ",5096300,5096310)");
        }
        List<String> indexed = new ArrayList<>();
        Checked<LayerShape> index =
                new GeoPackageReader(file, PLACE).each("streams", box, feature -> indexed.add(feature.id()));

        assertThat(scanned).containsExactly("2");
        assertThat(indexed).isEqualTo(scanned);
        assertThat(sentences(scan))
                .containsExactly(
                        "rivers.gpkg, streams: the layer has no spatial index; every feature was looked at. Do:"
                                + " nothing; a spatial index made in a map program would make this quicker");
        assertThat(sentences(index))
                .containsExactly("rivers.gpkg, streams: the file's spatial index was used, rtree_streams_geom");
    }

    private Checked<FeatureLayer> geoJson(String features, ColumnMapping mapping) throws Exception {
        Path file = Files.writeString(
                folder.resolve("rivers.geojson"),
                "{\"type\": \"FeatureCollection\", \"features\": [" + features + "]}");
        return MapFile.read(file, query(mapping, ""), SourcePlace.file("rivers.geojson"), UTM27);
    }

    private static String line(String coordinates) {
        return "{\"type\": \"Feature\", \"properties\": {\"code\": \"BRN\"}, \"geometry\": {\"type\": \"LineString\","
                + " \"coordinates\": [" + coordinates + "]}}";
    }

    @Test
    void geoJsonIsInDegreesUnlessAPersonSaysOtherwise() throws Exception {
        Checked<FeatureLayer> degrees = geoJson(line("[-20.84, 46.02], [-20.84, 46.03]"), ColumnMapping.NONE);
        assertThat(sentences(degrees))
                .containsExactly(
                        "rivers.geojson: its coordinates are degrees of EPSG:4326, in which nothing can be measured;"
                                + " lengths and distances are measured in WGS 84 / UTM zone 27N (EPSG:32627), metres, datum WGS 84."
                                + " Do: nothing");

        ColumnMapping metres =
                new ColumnMapping(Map.of(), Map.of(), Map.of(), Optional.of(StatedSystem.code("epsg:32627")));
        Checked<FeatureLayer> said = geoJson(line("[512400, 5096300], [512410, 5096310]"), metres);
        assertThat(sentences(said))
                .containsExactly(
                        "rivers.geojson: its coordinates were read as EPSG:32627, as round.json says; the file says"
                                + " nothing. Do: nothing if that is right");
        assertThat(said.value().orElseThrow().features().get(0).geometry())
                .contains(wkt("LINESTRING (512400 5096300, 512410 5096310)"));
    }

    @Test
    void mixedEmptyAndMissingShapesAreHandedOnForTheReaderOfStreamsToName() throws Exception {
        String rest = ",{\"type\": \"Feature\", \"properties\": {\"code\": \"A\"}, \"geometry\": null}"
                + ",{\"type\": \"Feature\", \"properties\": {\"code\": \"B\"}, \"geometry\": {\"type\": \"LineString\","
                + " \"coordinates\": []}}"
                + ",{\"type\": \"Feature\", \"properties\": {\"code\": \"C\"}, \"geometry\": {\"type\": \"Point\","
                + " \"coordinates\": [-20.84, 46.02]}}"
                + ",{\"type\": \"Feature\", \"properties\": {\"code\": \"D\"}, \"geometry\": {\"type\": \"Circle\","
                + " \"coordinates\": [-20.84, 46.02]}}";
        Checked<FeatureLayer> answer = geoJson(line("[-20.84, 46.02], [-20.84, 46.03]") + rest, ColumnMapping.NONE);

        assertThat(answer.value().orElseThrow().features())
                .extracting(feature -> feature.text("code").orElse("-") + " "
                        + feature.geometry().map(Geometry::getGeometryType).orElse("none")
                        + feature.geometry()
                                .filter(Geometry::isEmpty)
                                .map(none -> " empty")
                                .orElse(""))
                .containsExactly("BRN LineString", "A none", "B LineString empty", "C Point", "D none");
        assertThat(sentences(answer))
                .containsExactly(
                        "rivers.geojson, feature 5: its coordinates do not make the shape it says it is. Allowed: a"
                                + " Point, LineString or Polygon, or a Multi of these, as RFC 7946 has them. Do: draw or export this"
                                + " feature again");
    }

    @Test
    void aNumberThatIsNoneEndsAGeoJsonFile() throws Exception {
        assertThat(sentences(geoJson(line("[NaN, 46.02], [-20.84, 46.03]"), ColumnMapping.NONE)))
                .containsExactly(
                        "rivers.geojson, line 1: the file is not JSON from here on. Allowed: a GeoJSON file, whole."
                                + " Do: export the layer again as GeoJSON, or copy the file again if it breaks off here");
        assertThat(sentences(geoJson(line("[1e999, 46.02], [-20.84, 46.03]"), ColumnMapping.NONE)))
                .singleElement()
                .asString()
                .startsWith("rivers.geojson, feature 1: coordinates Infinity, 46.02 are outside -180");
    }

    @Test
    void aVertexThatIsNowhereIsNamedInAGeoPackage() throws Exception {
        Path file = agency("streams");
        // The second ordinate of the first vertex, little-endian, becomes not a number; then infinite.
        for (String bits : List.of("000000000000F87F", "000000000000F07F")) {
            PlainSql.change(
                    file,
                    "UPDATE streams SET geom = CAST(substr(geom, 1, 57) || X'" + bits + "' || substr(geom, 66) AS BLOB)"
                            + " WHERE fid = 2");
            assertThat(sentences(MapFile.read(file, query(columns(Map.of("code", "COMID")), ""), PLACE, UTM27)))
                    .containsExactly("rivers.gpkg, streams feature 2: its shape has a coordinate that is not a number."
                            + " Allowed: a line, point or area as the GeoPackage standard stores it. Do: draw or export this"
                            + " feature again");
        }
    }

    @Test
    void aMegabyteOfNoiseUnderAnyNameIsRefusedAtOnce() throws Exception {
        byte[] noise = new byte[1 << 20];
        new java.util.Random(3).nextBytes(noise);
        List<String> codes = new ArrayList<>();
        for (String name : List.of("noise.gpkg", "noise.shp", "noise.geojson", "noise.json")) {
            Path file = Files.write(folder.resolve(name), noise);
            Checked<FeatureLayer> answer =
                    MapFile.read(file, query(ColumnMapping.NONE, ""), SourcePlace.file(name), UTM27);
            assertThat(answer.value()).isEmpty();
            answer.problems().forEach(problem -> codes.add(problem.code()));
        }
        assertThat(codes).containsExactly("not-geopackage", "not-shapefile", "not-json", "not-json");
    }
}
