package org.wadeplan.planner.plan;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * {@code plan.json}: every step's result, readable by other programs and by a person with patience.
 *
 * <p>The same plan gives the same bytes. A plan may be edited by hand and read back; {@code week verify} then says what
 * the edit broke.
 */
public final class PlanJson {

    /** Raised whenever a reader of the older form would misread the newer one. */
    public static final int FORMAT_VERSION = 1;

    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .addModule(new PlanShapes())
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .disable(DeserializationFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private PlanJson() {}

    /** The document as text, ending in a newline. */
    public static String text(RoundPlan plan) {
        ObjectNode document = MAPPER.createObjectNode();
        document.put("formatVersion", FORMAT_VERSION);
        document.set("plan", MAPPER.valueToTree(plan));
        try {
            return MAPPER.writeValueAsString(document) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A plan could not be written as JSON", e);
        }
    }

    /** Any value of the plan as JSON, for commands that print one step. */
    public static String textOf(Object value) {
        try {
            return MAPPER.writeValueAsString(value) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A result could not be written as JSON", e);
        }
    }

    /** Ten hexadecimal characters that change whenever anything in the plan but its version does. */
    static String label(RoundPlan plan) {
        ObjectNode content = MAPPER.valueToTree(plan);
        content.remove("version");
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(MAPPER.writeValueAsString(content).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, 10);
        } catch (JsonProcessingException | NoSuchAlgorithmException e) {
            throw new IllegalStateException("A plan could not be hashed", e);
        }
    }

    /**
     * Reads a plan back. Its version label is not believed: {@link #labelFits} tells whether the content still agrees.
     *
     * @return the plan, or what is wrong with the file, in words that say where
     */
    public static Checked<RoundPlan> read(Path file) {
        SourcePlace place = SourcePlace.file(String.valueOf(file.getFileName()));
        if (!Files.isRegularFile(file)) {
            return Checked.failed(Problem.error(
                    "plan-missing",
                    place,
                    "there is no plan at " + file,
                    "a plan.json written by Wadeplan",
                    "make one with: wadeplan week plan ROUND"));
        }
        try {
            return parsed(Files.readString(file, StandardCharsets.UTF_8), place);
        } catch (IOException e) {
            return Checked.failed(Problem.error(
                    "plan-unreadable",
                    place,
                    "the file can't be read as UTF-8 text",
                    "a plan.json written by Wadeplan",
                    "check the file's rights, or make the plan again with: wadeplan week plan ROUND"));
        }
    }

    /** True where the plan's content is what its version label was made from. */
    public static boolean labelFits(RoundPlan plan) {
        return plan.version().label().equals(label(plan));
    }

    private static Checked<RoundPlan> parsed(String text, SourcePlace place) {
        try {
            JsonNode document = MAPPER.readTree(text);
            int version = document.path("formatVersion").asInt(0);
            if (version != FORMAT_VERSION) {
                return Checked.failed(Problem.error(
                        "plan-format",
                        place,
                        "formatVersion is " + document.path("formatVersion"),
                        "formatVersion " + FORMAT_VERSION,
                        "make the plan again with this version of Wadeplan"));
            }
            return Checked.of(MAPPER.treeToValue(document.path("plan"), RoundPlan.class));
        } catch (JsonProcessingException e) {
            String where =
                    e.getLocation() == null ? "" : " at line " + e.getLocation().getLineNr();
            return Checked.failed(Problem.error(
                    "plan-json",
                    place,
                    "not a plan" + where + ": " + plain(e.getOriginalMessage()),
                    "a plan.json written by Wadeplan",
                    "undo the last edit, or make the plan again with: wadeplan week plan ROUND"));
        }
    }

    /** Without the library's own remark on where the text came from. */
    private static String plain(String words) {
        return words.lines()
                .findFirst()
                .orElse("")
                .replaceAll(" ?\\((start marker|through reference chain)[^)]*\\).*", "");
    }
}
