package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.Field;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.io.GeoPackageWriter;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Round;

/** Stream lines as an agency has them: other names of columns, layers and files. */
class ForeignLayersTest {

    private static final String FILES = "\"streams\": \"streams.gpkg\"";
    private static final List<String> CODES = List.of("BRN", "HSK", "OUN", "PEL", "TOL");

    @TempDir
    Path temp;

    /** The demo's streams under an agency's columns, beside a line that is no stream and a layer that is not asked for. */
    private BrokenRound agency() throws Exception {
        BrokenRound round = BrokenRound.in(temp);
        FeatureLayer demo = new GeoPackageReader(round.file("streams.gpkg"), SourcePlace.file("streams.gpkg"))
                .read("streams")
                .value()
                .orElseThrow();
        List<Feature> features = new ArrayList<>();
        for (Feature feature : demo.features()) {
            Map<String, Attribute> attributes = new LinkedHashMap<>();
            attributes.put("RiverId", feature.attribute("code").orElseThrow());
            attributes.put("RiverName", feature.attribute("name").orElseThrow());
            attributes.put("FTYPE", Attribute.of("460"));
            features.add(Feature.of(feature.id(), feature.geometry().orElseThrow(), attributes));
        }
        features.add(Feature.of(
                "99",
                demo.features().get(0).geometry().orElseThrow(),
                Map.of("RiverId", Attribute.of("PIPE"), "FTYPE", Attribute.of("428"))));
        features.add(Feature.of(
                "100", demo.features().get(0).geometry().orElseThrow(), Map.of("RiverId", Attribute.of("ODD"))));
        LayerShape shape = new LayerShape(
                "main",
                demo.shape().crs(),
                LayerShape.Kind.LINESTRING,
                List.of(Field.text("RiverId"), Field.text("RiverName"), Field.text("FTYPE")));
        LayerShape empty = new LayerShape("lakes", demo.shape().crs(), LayerShape.Kind.POLYGON, List.of());
        CoordinateSystem utm27 = CoordinateSystem.named("EPSG:32627", SourcePlace.file("test"))
                .value()
                .orElseThrow();
        new GeoPackageWriter(utm27, Instant.EPOCH)
                .write(
                        round.file("rivers.gpkg"),
                        List.of(new FeatureLayer(shape, features), new FeatureLayer(empty, List.of())));
        return round.without("streams.gpkg");
    }

    private static BrokenRound with(BrokenRound round, String file, String keys) {
        return round.with("round.json", FILES, "\"streams\": \"" + file + "\"")
                .with("round.json", "\"formatVersion\": 1,", "\"formatVersion\": 1, " + keys + ",");
    }

    private static final String MAPPINGS =
            "\"mappings\": {\"streams\": {\"code\": \"riverid\", \"name\": \"RIVERNAME\","
                    + " \"kind\": \"FTYPE\", \"catchment\": {\"all\": \"BRN\"}, \"kindWords\": {\"460\": \"stream\"}}}";

    private static List<String> codes(Round round) {
        return round.terrain().network().lines().stream()
                .map(StreamLine::code)
                .sorted()
                .toList();
    }

    private static List<String> about(BrokenRound round, String file) {
        return round.sentences().stream()
                .filter(sentence -> sentence.contains(" " + file) || sentence.contains(" round.json"))
                .toList();
    }

    @Test
    void anAgencysColumnsLayerAndFilterMakeOurStreams() throws Exception {
        BrokenRound round =
                with(agency(), "rivers.gpkg#main", MAPPINGS + ", \"filters\": {\"streams\": \"NOT (ftype = 428)\"}");

        assertThat(codes(round.read().value().orElseThrow())).isEqualTo(CODES);
        assertThat(about(round, "rivers.gpkg"))
                .contains(
                        "NOTE filter-left-out round.json, filters.streams: the filter left out 2 of 7 features, 1 of them"
                                + " because a value asked for is not known")
                .noneMatch(sentence -> sentence.startsWith("ERROR"));
        assertThat(round.read().value().orElseThrow().hash().byFile()).containsKey("rivers.gpkg");
    }

    @Test
    void aColumnThatIsNotThereIsRefusedWhereverItIsNamed() throws Exception {
        BrokenRound round = with(
                agency(),
                "rivers.gpkg#main",
                MAPPINGS.replace("riverid", "comid") + ", \"filters\": {\"streams\": \"colour = 'red'\"}");

        assertThat(about(round, "rivers.gpkg"))
                .containsExactly(
                        "ERROR filter-column-unknown round.json, filters.streams: the filter asks for \"colour\", and the"
                                + " layer main has no such column. Allowed: one of its columns RiverId, RiverName, FTYPE."
                                + " Do: correct the name",
                        "ERROR mapping-column-unknown round.json, mappings.streams: the layer main has no column"
                                + " \"comid\", which code is to be read from. Allowed: one of its columns RiverId,"
                                + " RiverName, FTYPE. Do: write the name of the column that holds it");
    }

    @Test
    void unknownKeysAndWordsOfAMappingAreNamed() throws Exception {
        BrokenRound round = with(
                agency(),
                "rivers.gpkg#main",
                MAPPINGS.replace("\"460\": \"stream\"", "\"460\": \"brook\"")
                        .replace("\"name\":", "\"colour\": \"X\", \"name\":"));

        assertThat(about(round, "rivers.gpkg"))
                .contains(
                        "NOTE json-key-unknown round.json, mappings.streams.colour: this key is not known here and not"
                                + " read")
                .anyMatch(
                        sentence -> sentence.startsWith(
                                "ERROR word-unknown round.json, mappings.streams.kindWords.460: \"brook\" is not a word known"));
    }

    @Test
    void oneOfSeveralLayersMustBeNamed() throws Exception {
        assertThat(about(with(agency(), "rivers.gpkg", MAPPINGS), "rivers.gpkg"))
                .containsExactly(
                        "ERROR layer-not-clear rivers.gpkg: none of its layers is called streams. Allowed: one of"
                                + " lakes, main. Do: name the layer in round.json: \"files\": {\"streams\": \"rivers.gpkg#lakes\"}");
    }

    private BrokenRound shapefile() throws IOException {
        BrokenRound round = BrokenRound.in(temp).without("streams.gpkg");
        for (String ending : List.of("shp", "shx", "dbf", "prj")) {
            try (InputStream in = ForeignLayersTest.class.getResourceAsStream("foreign/lines." + ending)) {
                Files.write(
                        round.file("lines." + ending),
                        Optional.ofNullable(in).orElseThrow().readAllBytes());
            }
        }
        return with(
                round,
                "lines.shp",
                "\"mappings\": {\"streams\": {\"code\": \"RIVER_ID\", \"name\": \"RIVER_NM\", \"catchment\": \"CATCH\"}}");
    }

    @Test
    void aShapefileServesAsWellAndAllItsFilesCount() throws Exception {
        BrokenRound round = shapefile();
        Round read = round.read().value().orElseThrow();

        assertThat(codes(read)).isEqualTo(CODES);
        assertThat(round.sentences()).noneMatch(sentence -> sentence.startsWith("ERROR"));
        assertThat(read.hash().byFile()).containsKeys("lines.shp", "lines.shx", "lines.dbf", "lines.prj");
    }

    @Test
    void readingNeverChangesAFileOrLeavesOneBeside() throws Exception {
        BrokenRound round = shapefile();
        Map<String, String> before = content(round.folder());

        assertThat(round.read().value()).isPresent();

        assertThat(content(round.folder())).isEqualTo(before);
    }

    private static Map<String, String> content(Path folder) throws IOException {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                content.put(
                        folder.relativize(file).toString(),
                        Files.getLastModifiedTime(file) + " " + java.util.Arrays.hashCode(Files.readAllBytes(file)));
            }
        }
        return content;
    }

    @Test
    void aRoundWithoutASystemIsToldOneThatSuitsItsStreams() {
        BrokenRound round = BrokenRound.in(temp).with("round.json", "\"crs\": \"EPSG:32627\",", "");

        assertThat(round.sentences())
                .contains(
                        "ERROR json-key-missing round.json, crs: this key is missing. Allowed: a text in quotes. Do: add"
                                + " it; the streams lie around longitude -20.8, latitude 46.0, in UTM zone 27N (EPSG:32627)");
    }

    @Test
    void aRoundInDegreesIsToldOneThatSuitsItsStreamsFromAnyKindOfFile() {
        BrokenRound degrees = BrokenRound.in(temp)
                .with("round.json", "\"EPSG:32627\"", "\"EPSG:4326\"")
                .with("round.json", FILES, "\"streams\": \"streams.geojson\"");

        assertThat(degrees.sentences())
                .contains(
                        "ERROR crs-not-for-measuring round.json, crs: EPSG:4326 (WGS 84) has coordinates in degrees or in"
                                + " three dimensions, not in metres on a plane. Allowed: a projected system in metres made for the"
                                + " area, such as its UTM zone or national grid. Do: name such a system as the round's; map files in"
                                + " EPSG:4326 can still be read; the streams lie around longitude -20.8, latitude 46.0, in UTM zone"
                                + " 27N (EPSG:32627)");
    }
}
