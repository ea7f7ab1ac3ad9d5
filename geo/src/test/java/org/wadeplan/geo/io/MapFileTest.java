package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.geo.io.AgencyFile.PLACE;
import static org.wadeplan.geo.io.AgencyFile.UTM27;
import static org.wadeplan.geo.io.AgencyFile.agency;
import static org.wadeplan.geo.io.AgencyFile.columns;
import static org.wadeplan.geo.io.AgencyFile.query;
import static org.wadeplan.geo.io.AgencyFile.sentences;
import static org.wadeplan.geo.io.GeoPackageTest.wkt;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.SourcePlace;

class MapFileTest {

    @TempDir
    Path folder;

    @Test
    void callsAnAgencysColumnsByOurNames() throws Exception {
        ColumnMapping mapping = new ColumnMapping(
                Map.of("code", "comid", "name", "gnis_name", "kind", "FTYPE"),
                Map.of("catchment", "NHC"),
                Map.of("460", "stream", "428", "pipe"),
                Optional.empty());

        Checked<FeatureLayer> answer = MapFile.read(agency(folder, "flow"), query(mapping, ""), PLACE, UTM27);

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
                MapFile.read(agency(folder, "streams"), query(columns(Map.of("code", "REACHCODE")), ""), PLACE, UTM27);

        assertThat(answer.value()).isEmpty();
        assertThat(sentences(answer))
                .containsExactly(
                        "round.json, mappings.streams: the layer streams has no column \"REACHCODE\", which code is"
                                + " to be read from. Allowed: one of its columns COMID, GNIS_NAME, FType, StreamOrde. Do: write the"
                                + " name of the column that holds it");
    }

    @Test
    void theIdOfAFeatureStandsInForItsCode() throws Exception {
        Checked<FeatureLayer> answer =
                MapFile.read(agency(folder, "streams"), query(ColumnMapping.NONE, ""), PLACE, UTM27);

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
                MapFile.read(agency(folder, "streams"), query(mapping, "NOT (streamorde < 2)"), PLACE, UTM27);

        assertThat(answer.value().orElseThrow().features())
                .extracting(feature -> feature.text("code").orElse("-"))
                .containsExactly("71");
        assertThat(sentences(answer))
                .containsExactly(
                        "round.json, filters.streams: the filter left out 2 of 3 features, 1 of them because a value"
                                + " asked for is not known");
        assertThat(sentences(MapFile.read(agency(folder, "streams"), query(mapping, "COMID = 0"), PLACE, UTM27)))
                .containsExactly(
                        "round.json, filters.streams: the filter left out 3 of 3 features. Do: check the words and"
                                + " numbers in it");
    }

    @Test
    void takesTheLayerCalledAsThePartAndAsksWhereNoneIs() throws Exception {
        LayerQuery streams = query(columns(Map.of("code", "COMID")), "");

        assertThat(MapFile.read(agency(folder, "lakes", "STREAMS"), streams, PLACE, UTM27)
                        .value()
                        .orElseThrow()
                        .shape()
                        .name())
                .isEqualTo("STREAMS");
        assertThat(sentences(MapFile.read(agency(folder, "flow", "lakes"), streams, PLACE, UTM27)))
                .containsExactly(
                        "rivers.gpkg: none of its layers is called streams. Allowed: one of flow, lakes. Do: name"
                                + " the layer in round.json: \"files\": {\"streams\": \"rivers.gpkg#flow\"}");
    }

    @Test
    void aBoxGivesTheSameFeaturesWithAndWithoutASpatialIndex() throws Exception {
        Path file = agency(folder, "streams");
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

    private static String geoJsonLine(String coordinates) {
        return "{\"type\": \"Feature\", \"properties\": {\"code\": \"BRN\"}, \"geometry\": {\"type\": \"LineString\","
                + " \"coordinates\": [" + coordinates + "]}}";
    }

    @Test
    void geoJsonIsInDegreesUnlessAPersonSaysOtherwise() throws Exception {
        Checked<FeatureLayer> degrees = geoJson(geoJsonLine("[-20.84, 46.02], [-20.84, 46.03]"), ColumnMapping.NONE);
        assertThat(sentences(degrees))
                .containsExactly(
                        "rivers.geojson: its coordinates are degrees of EPSG:4326, in which nothing can be measured;"
                                + " lengths and distances are measured in WGS 84 / UTM zone 27N (EPSG:32627), metres, datum WGS 84."
                                + " Do: nothing");

        ColumnMapping metres =
                new ColumnMapping(Map.of(), Map.of(), Map.of(), Optional.of(StatedSystem.code("epsg:32627")));
        Checked<FeatureLayer> said = geoJson(geoJsonLine("[512400, 5096300], [512410, 5096310]"), metres);
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
        Checked<FeatureLayer> answer =
                geoJson(geoJsonLine("[-20.84, 46.02], [-20.84, 46.03]") + rest, ColumnMapping.NONE);

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
        assertThat(sentences(geoJson(geoJsonLine("[NaN, 46.02], [-20.84, 46.03]"), ColumnMapping.NONE)))
                .containsExactly(
                        "rivers.geojson, line 1: the file is not JSON from here on. Allowed: a GeoJSON file, whole."
                                + " Do: export the layer again as GeoJSON, or copy the file again if it breaks off here");
        assertThat(sentences(geoJson(geoJsonLine("[1e999, 46.02], [-20.84, 46.03]"), ColumnMapping.NONE)))
                .singleElement()
                .asString()
                .startsWith("rivers.geojson, feature 1: coordinates Infinity, 46.02 are outside -180");
    }

    @Test
    void aVertexThatIsNowhereIsNamedInAGeoPackage() throws Exception {
        Path file = agency(folder, "streams");
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
