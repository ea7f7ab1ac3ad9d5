package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Features of a stream layer in words, and what a reading says of them. */
abstract class DrawnStreams {

    static final SourcePlace FILE = SourcePlace.file("s.gpkg");
    private static final CoordinateSystem UTM27 =
            CoordinateSystem.named("EPSG:32627", FILE).value().orElseThrow();
    static final String DOWN = "source-to-mouth";

    final List<Feature> features = new ArrayList<>();
    StreamRules rules = StreamRules.USUAL;

    /** Coordinates are metres from 500000, 5100000; a dash stands for no flow column. */
    DrawnStreams line(String code, String flow, String wkt) {
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        attributes.put("code", Attribute.of(code));
        attributes.put("name", Attribute.of(code));
        attributes.put("catchment", Attribute.of("C"));
        if (!flow.equals("-")) {
            attributes.put("flow", Attribute.of(flow));
        }
        features.add(new Feature(Integer.toString(features.size() + 1), shape(wkt), attributes));
        return this;
    }

    private static Optional<Geometry> shape(String wkt) {
        try {
            return wkt.equals("-")
                    ? Optional.empty()
                    : Optional.of(AffineTransformation.translationInstance(500000, 5100000)
                            .transform(new WKTReader().read(wkt)));
        } catch (ParseException wrong) {
            throw new AssertionError(wrong);
        }
    }

    Checked<StreamNetwork> read(String... accepted) {
        LayerShape shape = new LayerShape(
                "s", Optional.of(StatedSystem.code("EPSG:32627")), LayerShape.Kind.LINESTRING, List.of());
        return new StreamReader(UTM27, FILE, StreamHints.NONE, AcceptedRepairs.of(accepted), rules)
                .read(new FeatureLayer(shape, features));
    }

    static List<String> found(Checked<StreamNetwork> answer) {
        return answer.problems().stream()
                .map(problem -> problem.severity() + " " + problem.code() + " "
                        + problem.place().row().orElse("") + ": " + problem.found())
                .toList();
    }

    static String drawn(Checked<StreamNetwork> answer, String code) {
        return AffineTransformation.translationInstance(-500000, -5100000)
                .transform(answer.value().orElseThrow().line(code).orElseThrow().line())
                .toText();
    }

    /** What a reading offers as {@code --accept} in its remedies. */
    static List<String> offered(Checked<StreamNetwork> answer) {
        return answer.problems().stream()
                .map(Problem::remedy)
                .filter(remedy -> remedy.contains("accept the repair with --accept "))
                .map(remedy -> remedy.replaceAll(".*accept the repair with --accept (\\S+) .*", "$1"))
                .toList();
    }

    static final String SLIP = "; the repair assumes a slip of drawing: ";

    /** Falls one metre for every ten metres east. */
    void slopingEast() {
        rules = rules.with(place -> OptionalDouble.of(1000 - (place.eastM() - 500000) / 10), 0.1);
    }
}
