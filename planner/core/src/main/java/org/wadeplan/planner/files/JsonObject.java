package org.wadeplan.planner.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * One object of a JSON file, read key by key; the counterpart of {@link Row}.
 *
 * <p>Nothing here throws on what a person wrote. A missing or broken value is reported with its path and gives a
 * stand-in, and {@link Found#whole} turns false, so that the caller throws the result away.
 */
final class JsonObject {

    /** Gathers what is found in one file. */
    static final class Found {
        private final String file;
        private final List<Problem> problems = new ArrayList<>();
        private boolean whole = true;

        Found(String file) {
            this.file = file;
        }

        List<Problem> problems() {
            return List.copyOf(problems);
        }

        /** False once something required was missing or broken. */
        boolean whole() {
            return whole;
        }

        void refuse(String path, Fault fault) {
            whole = false;
            problems.add(Problem.error(
                    fault.code(), SourcePlace.part(file, path), fault.found(), fault.expected(), fault.remedy()));
        }

        private void note(String path, String what, String remedy) {
            problems.add(Problem.note("json-key-unknown", SourcePlace.part(file, path), what, "", remedy));
        }
    }

    private final JsonNode node;
    private final String path;
    private final Found found;
    private final Set<String> asked = new LinkedHashSet<>();

    JsonObject(JsonNode node, String path, Found found) {
        this.node = node;
        this.path = path;
        this.found = found;
    }

    String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    boolean has(String key) {
        asked.add(key);
        return node.hasNonNull(key);
    }

    boolean isObject(String key) {
        return node.path(key).isObject();
    }

    List<String> keys() {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    void refuse(String key, Fault fault) {
        found.refuse(pathOf(key), fault);
    }

    /** Reports every key that nobody asked for. Call it once all others were read. */
    void noteUnknownKeys() {
        List<String> unused = asked.stream().filter(key -> !node.has(key)).toList();
        for (Iterator<String> keys = node.fieldNames(); keys.hasNext(); ) {
            String key = keys.next();
            if (!asked.contains(key)) {
                Optional<String> nearest = NearestWord.of(key, unused);
                found.note(
                        pathOf(key),
                        "this key is not known here and not read",
                        nearest.map(known -> "if " + known + " is meant, rename it")
                                .orElse(""));
            }
        }
    }

    private <T> T value(String key, String expected, Function<JsonNode, Optional<Reading<T>>> reader, T standIn) {
        if (!has(key)) {
            refuse(key, new Fault("json-key-missing", "this key is missing", expected, "add it"));
            return standIn;
        }
        JsonNode value = node.get(key);
        Reading<T> reading = reader.apply(value)
                .orElseGet(() -> Reading.fault("json-type", "the value is " + words(value), expected, "mend it"));
        reading.fault().ifPresent(fault -> refuse(key, fault));
        return reading.value().orElse(standIn);
    }

    private static String words(JsonNode value) {
        return switch (value.getNodeType()) {
            case STRING -> "a text, " + NumberCell.quoted(value.asText());
            case NUMBER -> "a number, " + value.asText();
            case BOOLEAN -> value.asText();
            case ARRAY -> "a list";
            case OBJECT -> "an object in braces";
            default -> "of another kind";
        };
    }

    private <T> T fromText(String key, String expected, Function<String, Reading<T>> reader, T standIn) {
        return value(
                key,
                expected,
                value -> value.isTextual()
                        ? Optional.of(reader.apply(value.asText().strip()))
                        : Optional.empty(),
                standIn);
    }

    String text(String key) {
        return fromText(key, "a text in quotes", JsonObject::filled, "");
    }

    private static Reading<String> filled(String text) {
        return text.isEmpty()
                ? Reading.fault("blank", "the text is empty", "a text in quotes", "fill it in")
                : Reading.of(text);
    }

    <T> T word(String key, Words<T> words) {
        return fromText(key, "a word in quotes", words::read, words.any());
    }

    LocalDate date(String key) {
        return fromText(key, "a date in quotes, such as \"2027-09-06\"", DateCell::date, LocalDate.EPOCH);
    }

    LocalTime time(String key) {
        return fromText(key, "a time of day in quotes, such as \"05:00\"", DateCell::time, LocalTime.MIDNIGHT);
    }

    double decimal(String key, Range range) {
        return value(
                key,
                range.words("a number"),
                value -> value.isNumber() ? Optional.of(NumberCell.decimal(value.asText(), range)) : Optional.empty(),
                range.min());
    }

    int integer(String key, Range range) {
        return value(
                key,
                range.words("a whole number"),
                value -> value.isNumber() ? Optional.of(NumberCell.integer(value.asText(), range)) : Optional.empty(),
                (int) range.min());
    }

    boolean flag(String key) {
        return value(
                key,
                "true or false",
                value -> value.isBoolean() ? Optional.of(Reading.of(value.asBoolean())) : Optional.empty(),
                false);
    }

    long seed(String key) {
        return value(
                key,
                "a whole number",
                value -> value.canConvertToExactIntegral() && value.canConvertToLong()
                        ? Optional.of(Reading.of(value.asLong()))
                        : Optional.empty(),
                0L);
    }

    JsonObject object(String key) {
        JsonNode inner = value(
                key,
                "an object in braces",
                value -> value.isObject() ? Optional.of(Reading.of(value)) : Optional.empty(),
                NOTHING);
        // Whatever is asked of a missing object would be missing too: once is enough.
        Found reportTo = node.path(key).isObject() ? found : new Found(found.file);
        return new JsonObject(inner, pathOf(key), reportTo);
    }

    /** Objects in a list, each to be read key by key. */
    List<JsonObject> objects(String key) {
        JsonNode list = value(
                key,
                "a list of objects in braces",
                value -> value.isArray() ? Optional.of(Reading.of(value)) : Optional.empty(),
                NOTHING);
        List<JsonObject> objects = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String at = key + "[" + (i + 1) + "]";
            if (list.get(i).isObject()) {
                objects.add(new JsonObject(list.get(i), pathOf(at), found));
            } else {
                refuse(
                        at,
                        new Fault("json-type", "the value is " + words(list.get(i)), "an object in braces", "mend it"));
            }
        }
        return objects;
    }

    private static final JsonNode NOTHING = new ObjectNode(JsonNodeFactory.instance);

    /** Texts in a list, each read on its own. */
    <T> List<T> list(String key, Function<String, Reading<T>> reader) {
        JsonNode list = value(
                key,
                "a list in square brackets",
                value -> value.isArray() ? Optional.of(Reading.of(value)) : Optional.empty(),
                NOTHING);
        List<T> values = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            JsonNode item = list.get(i);
            Reading<T> reading = item.isTextual()
                    ? reader.apply(item.asText().strip())
                    : Reading.fault("json-type", "the value is " + words(item), "a text in quotes", "mend it");
            String itemKey = key + "[" + i + "]";
            reading.fault().ifPresent(fault -> refuse(itemKey, fault));
            reading.value().ifPresent(values::add);
        }
        return List.copyOf(values);
    }
}
