package org.wadeplan.geo.io;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Goes through the text of a GeoJSON file and holds one feature at a time. */
final class GeoJsonText {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Path file;

    GeoJsonText(Path file) {
        this.file = file;
    }

    /**
     * What can be told of the whole.
     *
     * @param fields the attributes of all features, in the order in which they first stand
     * @param statedSystem the name in a {@code crs} member; blank where there is none
     */
    record Outline(List<Field> fields, String statedSystem) {}

    /** Takes one feature. */
    @FunctionalInterface
    interface EachFeature {
        void take(String id, Map<String, Attribute> attributes, JsonNode geometry);
    }

    /** Reads all members of the top object, calling {@code features} at the list of features. */
    private void members(Member other, InList features) throws IOException {
        try (JsonParser json = MAPPER.createParser(file.toFile())) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                json.skipChildren();
                return;
            }
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                json.nextToken();
                if (name.equals("features") && json.currentToken() == JsonToken.START_ARRAY) {
                    features.read(json);
                } else if (name.equals("type") || name.equals("crs")) {
                    other.read(name, MAPPER.readTree(json));
                } else {
                    json.skipChildren();
                }
            }
        }
    }

    @FunctionalInterface
    private interface Member {
        void read(String name, JsonNode value);
    }

    @FunctionalInterface
    private interface InList {
        void read(JsonParser json) throws IOException;
    }

    /** Empty where the file is JSON but no collection of features. */
    Optional<Outline> outline() throws IOException {
        Map<String, Field> fields = new LinkedHashMap<>();
        Map<String, JsonNode> members = new LinkedHashMap<>();
        boolean[] list = {false};
        members(members::put, json -> {
            list[0] = true;
            while (json.nextToken() != JsonToken.END_ARRAY) {
                outlineOfOne(json, fields);
            }
        });
        boolean collection = list[0]
                && Optional.ofNullable(members.get("type"))
                        .filter(type -> type.asText().equals("FeatureCollection"))
                        .isPresent();
        String crs = Optional.ofNullable(members.get("crs"))
                .map(node -> node.path("properties").path("name").asText())
                .orElse("");
        return collection ? Optional.of(new Outline(List.copyOf(fields.values()), crs)) : Optional.empty();
    }

    private static void outlineOfOne(JsonParser json, Map<String, Field> fields) throws IOException {
        if (json.currentToken() != JsonToken.START_OBJECT) {
            json.skipChildren();
            return;
        }
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            boolean properties = json.currentName().equals("properties");
            json.nextToken();
            if (properties && json.currentToken() == JsonToken.START_OBJECT) {
                attributes(MAPPER.readTree(json))
                        .forEach((name, value) -> fields.putIfAbsent(name, new Field(name, type(value))));
            } else {
                json.skipChildren();
            }
        }
    }

    void each(EachFeature sink) throws IOException {
        members((name, value) -> {}, json -> {
            int number = 0;
            while (json.nextToken() != JsonToken.END_ARRAY) {
                number++;
                JsonNode node = MAPPER.readTree(json);
                String id = node.hasNonNull("id") ? node.path("id").asText() : Integer.toString(number);
                sink.take(id, attributes(node.path("properties")), node.path("geometry"));
            }
        });
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

    private static Map<String, Attribute> attributes(JsonNode properties) {
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry : properties.properties()) {
            attribute(entry.getValue()).ifPresent(value -> attributes.put(entry.getKey(), value));
        }
        return attributes;
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
            double number = value.doubleValue();
            return Double.isFinite(number) ? Optional.of(Attribute.of(number)) : Optional.empty();
        }
        return Optional.of(Attribute.of(value.isTextual() ? value.textValue() : value.toString()));
    }
}
