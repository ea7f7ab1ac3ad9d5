package org.wadeplan.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;

/** One command line, run as a person would, with all that it said. */
record CommandRun(int code, String out, String err) {

    /** Where the project stands, wherever a test is started from. */
    static final Path PROJECT = above(Path.of("").toAbsolutePath());

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-09-05T18:00:00Z"), ZoneOffset.UTC);
    private static final JsonMapper ONE_DOCUMENT = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    static {
        System.setProperty("wadeplan.home", PROJECT.toString());
    }

    static CommandRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), CLOCK, List.of(arguments));
        return new CommandRun(code, out.toString(), err.toString());
    }

    /** A demo round of the project. */
    static Path demo(String name) {
        return PROJECT.resolve("demo-sites").resolve(name);
    }

    /** Both outputs in one line, so that a test need not know where lines were broken. */
    String words() {
        return (out + " " + err).replaceAll("\\s+", " ");
    }

    /** The one JSON document that standard output must be, whole and with nothing behind it. */
    JsonNode json() {
        try {
            return ONE_DOCUMENT.readTree(out);
        } catch (JsonProcessingException fault) {
            throw new AssertionError("Standard output is not one JSON document: " + out, fault);
        }
    }

    private static Path above(Path start) {
        for (Path folder = start; folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve("DEVELOPERS.md"))) {
                return folder;
            }
        }
        throw new IllegalStateException("No DEVELOPERS.md above " + start + ": start tests inside the project");
    }
}
