package org.wadeplan.geo.io;

import static org.wadeplan.geo.io.GeoPackageTest.CHANGED;
import static org.wadeplan.geo.io.GeoPackageTest.wkt;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** A map file as an agency has it, and what a test asks of it. */
final class AgencyFile {

    static final SourcePlace PLACE = SourcePlace.file("rivers.gpkg");

    static final CoordinateSystem UTM27 = system("EPSG:32627");

    private AgencyFile() {}

    static CoordinateSystem system(String code) {
        return CoordinateSystem.named(code, PLACE).value().orElseThrow();
    }

    /** A layer as an agency has it: its own columns, one line of each kind. */
    static Path agency(Path folder, String... layers) throws Exception {
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

    static Feature line(String id, double eastM, Map<String, Attribute> attributes) {
        return Feature.of(id, wkt("LINESTRING (" + eastM + " 5096300, " + (eastM + 10) + " 5096310)"), attributes);
    }

    static LayerQuery query(ColumnMapping mapping, String filter) {
        return new LayerQuery(
                "streams",
                Optional.empty(),
                mapping,
                filter.isEmpty() ? Optional.empty() : Optional.of(filter),
                Optional.of("code"),
                SourcePlace.file("round.json"));
    }

    static ColumnMapping columns(Map<String, String> columns) {
        return new ColumnMapping(columns, Map.of(), Map.of(), Optional.empty());
    }

    static List<String> sentences(Checked<?> answer) {
        return answer.problems().stream().map(Problem::sentence).toList();
    }
}
