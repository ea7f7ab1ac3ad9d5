package org.wadeplan.planner.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.RoundHeader;

/**
 * {@code round.json}, read.
 *
 * @param header empty where a key is missing or broken
 * @param files names of files by what they hold, where they differ from the usual ones
 * @param layers how to read its map layers
 */
record RoundJson(Optional<RoundHeader> header, Map<String, String> files, LayerSettings layers) {

    static final String FILE = "round.json";

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    /** What could be read, with every problem; no value where the file is no JSON object of a version known here. */
    static Checked<RoundJson> read(Path folder) {
        return TextFile.read(folder.resolve(FILE), FILE)
                .then(RoundJson::parsed)
                .then(RoundJson::ofKnownVersion)
                .then(RoundJson::read);
    }

    private static Checked<ObjectNode> parsed(String text) {
        try {
            JsonNode node = MAPPER.readTree(text);
            return node instanceof ObjectNode object
                    ? Checked.of(object)
                    : Checked.failed(notJson(1, "the file holds no object in braces"));
        } catch (JsonProcessingException broken) {
            int line = broken.getLocation() == null
                    ? 1
                    : Math.max(1, broken.getLocation().getLineNr());
            String reason = broken.getOriginalMessage().lines().findFirst().orElse("");
            return Checked.failed(notJson(line, "the file stops being JSON here: " + reason));
        }
    }

    private static Problem notJson(int line, String found) {
        return Problem.error(
                "json-broken",
                SourcePlace.line(FILE, line),
                found,
                "an object in braces, keys in quotes, commas between entries, each key once",
                "mend it at or just before this line");
    }

    private static Checked<ObjectNode> ofKnownVersion(ObjectNode round) {
        JsonObject.Found found = new JsonObject.Found(FILE);
        int version = new JsonObject(round, "", found).integer("formatVersion", Range.of(1, 1_000_000, ""));
        if (!found.whole()) {
            return Checked.of(round, found.problems());
        }
        if (version > RoundUpgrades.CURRENT) {
            return Checked.failed(Problem.error(
                    "format-newer",
                    SourcePlace.part(FILE, "formatVersion"),
                    "the round has format version " + version + ", made by a newer Wadeplan",
                    "a version up to " + RoundUpgrades.CURRENT,
                    "open it with the newer Wadeplan"));
        }
        return Checked.of(RoundUpgrades.upgraded(round, version));
    }

    private static Checked<RoundJson> read(ObjectNode round) {
        JsonObject.Found found = new JsonObject.Found(FILE);
        JsonObject top = new JsonObject(round, "", found);
        RoundHeader header = HeaderJson.header(top);
        Map<String, String> files = files(top);
        LayerSettings layers = LayerSettings.read(top);
        top.has("formatVersion");
        top.noteUnknownKeys();
        return Checked.of(
                new RoundJson(found.whole() ? Optional.of(header) : Optional.empty(), files, layers), found.problems());
    }

    private static Map<String, String> files(JsonObject top) {
        Map<String, String> names = new LinkedHashMap<>();
        if (top.has("files")) {
            JsonObject files = top.object("files");
            for (String key : files.keys()) {
                String name = RoundFolder.KNOWN.contains(key) ? files.text(key) : "";
                if (RoundFolder.inside(name)) {
                    names.put(key, name);
                } else if (!name.isEmpty()) {
                    refuseOutside(files, key, name);
                }
            }
            RoundFolder.KNOWN.forEach(files::has);
            files.noteUnknownKeys();
        }
        return names;
    }

    /** Such a file is not opened either. */
    private static void refuseOutside(JsonObject files, String key, String name) {
        files.refuse(
                key,
                new Fault(
                        "file-outside-folder",
                        NumberCell.quoted(name) + " leaves the round folder or is a private file",
                        "the name of a file in the round folder",
                        "copy the file into the folder"));
    }
}
