package org.wadeplan.geo.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wadeplan.geo.io.AgencyFile.PLACE;
import static org.wadeplan.geo.io.AgencyFile.UTM27;
import static org.wadeplan.geo.io.AgencyFile.agency;
import static org.wadeplan.geo.io.AgencyFile.columns;
import static org.wadeplan.geo.io.AgencyFile.line;
import static org.wadeplan.geo.io.AgencyFile.query;
import static org.wadeplan.geo.io.AgencyFile.sentences;
import static org.wadeplan.geo.io.AgencyFile.system;
import static org.wadeplan.geo.io.ShapefileBytes.parts;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.SourcePlace;

/** What system a map file is in, and what becomes of it in the round's. */
class MapFileSystemsTest {

    @TempDir
    Path folder;

    @Test
    void aSystemWithoutACodeIsReadByItsDescription() throws Exception {
        Path file = agency(folder, "streams");
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
        Path file = agency(folder, "streams");
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
        Path file = agency(folder, "streams");
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
        Path file = agency(folder, "streams");
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
        Path file = agency(folder, "streams");
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
}
