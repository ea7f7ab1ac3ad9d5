package org.wadeplan.planner.decon.trace;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads an event file of kind {@code pest-found}. */
public final class FindEvent {

    private static final int FORMAT_VERSION = 1;
    private static final long LARGEST_BYTES = 1_000_000;
    private static final String KIND = "pest-found";

    private final String file;
    private final List<Problem> problems = new ArrayList<>();

    private FindEvent(String file) {
        this.file = file;
    }

    /** The words of the find, not yet checked against a round; every fault of the file at once. */
    public static Checked<FindWords> read(Path path) {
        String name =
                Optional.ofNullable(path.getFileName()).map(Path::toString).orElse("event");
        return new FindEvent(name).words(path);
    }

    private Checked<FindWords> words(Path path) {
        JsonNode event;
        try {
            if (Files.size(path) > LARGEST_BYTES) {
                return unreadable("it has more than " + LARGEST_BYTES + " bytes", "an event of a few lines");
            }
            event = new ObjectMapper().readTree(Files.readString(path, StandardCharsets.UTF_8));
        } catch (JsonProcessingException broken) {
            return unreadable(
                    "it is no JSON: line " + broken.getLocation().getLineNr() + ", column "
                            + broken.getLocation().getColumnNr(),
                    "one JSON object");
        } catch (IOException unreadable) {
            return unreadable("it cannot be read, or is no UTF-8 text", "a readable text file");
        }
        if (event == null || !event.isObject()) {
            return unreadable("it holds no JSON object", "one JSON object");
        }
        check(event);
        JsonNode facts = event.path("facts");
        FindWords words = new FindWords(
                text(facts, "water", true),
                text(facts, "pest", true),
                text(facts, "site", false),
                text(event, "at", true),
                text(facts, "note", false));
        return problems.isEmpty() ? Checked.of(words) : Checked.failed(problems);
    }

    private void check(JsonNode event) {
        if (event.path("formatVersion").asInt(0) != FORMAT_VERSION) {
            problems.add(Problem.error(
                    "event-version",
                    SourcePlace.part(file, "formatVersion"),
                    event.path("formatVersion").isMissingNode()
                            ? "not given"
                            : "version " + event.path("formatVersion").asText(),
                    Integer.toString(FORMAT_VERSION),
                    "write the event for this version of the program"));
        }
        if (!event.path("kind").asText().equals(KIND)) {
            problems.add(Problem.error(
                    "event-kind",
                    SourcePlace.part(file, "kind"),
                    event.path("kind").isMissingNode()
                            ? "not given"
                            : "\"" + event.path("kind").asText() + "\"",
                    KIND,
                    "give a file about a pest that was found"));
        }
        String status = event.path("facts").path("status").asText("known");
        if (!status.equals("known")) {
            problems.add(Problem.error(
                    "event-status",
                    SourcePlace.part(file, "facts.status"),
                    "\"" + status + "\"",
                    "known: a trace follows what somebody saw",
                    "enter a suspicion in water_pests.csv instead"));
        }
    }

    private Optional<String> text(JsonNode node, String field, boolean required) {
        JsonNode value = node.path(field);
        boolean given = value.isTextual() && !value.asText().isBlank();
        if (!given && (required || !(value.isMissingNode() || value.isNull()))) {
            problems.add(Problem.error(
                    "event-field",
                    SourcePlace.part(file, field),
                    value.isMissingNode() ? "not given" : "no text: " + value,
                    "a text",
                    "write it in quotation marks"));
        }
        return given ? Optional.of(value.asText()) : Optional.empty();
    }

    private Checked<FindWords> unreadable(String found, String expected) {
        return Checked.failed(Problem.error(
                "event-unreadable",
                SourcePlace.file(file),
                found,
                expected,
                "check the path, and open it in an editor"));
    }
}
