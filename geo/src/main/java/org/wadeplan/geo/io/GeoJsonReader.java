package org.wadeplan.geo.io;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Reads a GeoJSON FeatureCollection (RFC 7946: longitude and latitude on WGS 84, nothing else) into the round's system.
 * Not to be shared between threads.
 */
public final class GeoJsonReader {

    private final Path file;
    private final SourcePlace place;
    private final CoordinateSystem round;
    private final List<Problem> problems = new ArrayList<>();

    /**
     * @param file the GeoJSON file
     * @param place how problems name it
     * @param round the system to turn longitudes and latitudes into; also the guess where a file holds metres
     */
    public GeoJsonReader(Path file, SourcePlace place, CoordinateSystem round) {
        this.file = file;
        this.place = place;
        this.round = round;
    }

    /** Every feature, in the round's metric system and the file's order. */
    public Checked<FeatureLayer> read() {
        problems.clear();
        Optional<Problem> unreadable = FileCheck.readable(file, place, "a GeoJSON file");
        if (unreadable.isPresent()) {
            return Checked.failed(unreadable.get());
        }
        try {
            return collection(new ObjectMapper().readTree(file.toFile()));
        } catch (JsonProcessingException broken) {
            return Checked.failed(Problem.error(
                    "not-json",
                    lineOf(broken),
                    "the file is not JSON from here on",
                    "a GeoJSON file, whole",
                    "export the layer again as GeoJSON, or copy the file again if it breaks off here"));
        } catch (IOException refused) {
            return Checked.failed(Problem.error(
                    "file-unreadable", place, "the file cannot be read", "a GeoJSON file", "check the disk it is on"));
        }
    }

    private SourcePlace lineOf(JsonProcessingException broken) {
        return broken.getLocation() == null || broken.getLocation().getLineNr() < 1
                ? place
                : SourcePlace.line(place.file(), broken.getLocation().getLineNr());
    }

    private Checked<FeatureLayer> collection(JsonNode root) {
        if (!root.path("type").asText().equals("FeatureCollection")
                || !root.path("features").isArray()) {
            return Checked.failed(Problem.error(
                    "not-geojson",
                    place,
                    "the file is JSON, but not a GeoJSON FeatureCollection",
                    "a FeatureCollection as RFC 7946 describes it",
                    "export the whole layer as GeoJSON"));
        }
        refuseOtherSystem(root.path("crs").path("properties").path("name").asText());
        List<Feature> features = new ArrayList<>();
        Map<String, Field> fields = new LinkedHashMap<>();
        for (JsonNode node : root.path("features")) {
            Feature feature = feature(node, features.size() + 1);
            features.add(feature);
            feature.attributes().forEach((name, value) -> fields.putIfAbsent(name, new Field(name, type(value))));
        }
        tellOnce("coordinates-not-degrees");
        LayerShape shape =
                new LayerShape(name(), Optional.of(round.code()), Kind.GEOMETRY, List.copyOf(fields.values()));
        return Checked.of(new FeatureLayer(shape, features), problems);
    }

    /** A whole file in metres is one mistake, not one for each of its features. */
    private void tellOnce(String code) {
        List<Problem> same =
                problems.stream().filter(problem -> problem.code().equals(code)).toList();
        if (same.size() > 1) {
            Problem first = same.get(0);
            problems.removeAll(same);
            problems.add(Problem.error(
                    code,
                    first.place(),
                    first.found() + "; so are those of " + (same.size() - 1) + " more features",
                    first.expected(),
                    first.remedy()));
        }
    }

    private String name() {
        return place.file().replaceAll("^.*[/\\\\]", "").replaceAll("\\.[^.]*$", "");
    }

    private static Field.Type type(Attribute value) {
        if (value instanceof Attribute.Whole) {
            return Field.Type.WHOLE;
        }
        if (value instanceof Attribute.Decimal) {
            return Field.Type.DECIMAL;
        }
        return value instanceof Attribute.Flag ? Field.Type.FLAG : Field.Type.TEXT;
    }

    /** Older programs wrote a crs member; RFC 7946 took it out. Only WGS 84, longitude first, can be what it says. */
    private void refuseOtherSystem(String stated) {
        if (!stated.isEmpty() && !stated.endsWith("CRS84") && !stated.endsWith("4326")) {
            problems.add(Problem.error(
                    "geojson-crs",
                    place,
                    "the file says its coordinate system is " + stated,
                    "longitude and latitude on WGS 84, as RFC 7946 has it",
                    "export it again in WGS 84, or as a GeoPackage, which may be in any system"));
        }
    }

    private Feature feature(JsonNode node, int number) {
        String id = node.hasNonNull("id") ? node.path("id").asText() : Integer.toString(number);
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry : node.path("properties").properties()) {
            attribute(entry.getValue()).ifPresent(value -> attributes.put(entry.getKey(), value));
        }
        GeoJsonShape shape = new GeoJsonShape(round, place.row("feature " + id));
        Feature feature = new Feature(id, shape.read(node.path("geometry")), attributes);
        problems.addAll(shape.problems());
        return feature;
    }

    private static Optional<Attribute> attribute(JsonNode value) {
        if (value.isNull()) {
            return Optional.empty();
        }
        if (value.isBoolean()) {
            return Optional.of(Attribute.of(value.booleanValue()));
        }
        if (value.canConvertToExactIntegral() && value.canConvertToLong()) {
            return Optional.of(Attribute.of(value.longValue()));
        }
        if (value.isNumber()) {
            return Optional.of(Attribute.of(value.doubleValue()));
        }
        return Optional.of(Attribute.of(value.isTextual() ? value.textValue() : value.toString()));
    }
}
