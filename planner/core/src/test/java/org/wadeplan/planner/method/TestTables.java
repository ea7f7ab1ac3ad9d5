package org.wadeplan.planner.method;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.wadeplan.geo.problem.Checked;

/** Tables for tests: the scenario's two, and small ones written in the test. */
final class TestTables {

    private TestTables() {}

    /** The scenario's corrected table of 16 rules. */
    static DecisionTable corrected() {
        return read(resource("survey-method.dmn")).value().orElseThrow();
    }

    /** The scenario's table as received: 14 rules, with a gap and contradictions. */
    static DecisionTable received() {
        return read(resource("survey-method-received.dmn")).value().orElseThrow();
    }

    static String resource(String name) {
        try (InputStream stream = TestTables.class.getResourceAsStream("/method/" + name)) {
            return new String(Objects.requireNonNull(stream, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Checked<DecisionTable> read(String xml) {
        return DecisionTableReader.read(xml.getBytes(StandardCharsets.UTF_8), "method.dmn");
    }

    /** A DMN 1.3 file around the inside of a decision table. */
    static String dmn(String attributes, String inside) {
        return """
                <definitions xmlns="https://www.omg.org/spec/DMN/20191111/MODEL/">
                  <decision id="d" name="small">
                    <decisionTable %s>
                %s
                    </decisionTable>
                  </decision>
                </definitions>
                """.formatted(attributes, inside);
    }

    static String input(String name, String type) {
        return "<input><inputExpression typeRef=\"" + type + "\"><text>" + name + "</text></inputExpression></input>\n";
    }

    static String methodOutput() {
        return "<output name=\"method\" typeRef=\"string\"/>\n";
    }

    /** A rule whose last text is the method, without its quotation marks. */
    static String rule(String... texts) {
        StringBuilder row = new StringBuilder("<rule>");
        for (int i = 0; i < texts.length - 1; i++) {
            row.append("<inputEntry><text>").append(escaped(texts[i])).append("</text></inputEntry>");
        }
        String output = escaped("\"" + texts[texts.length - 1] + "\"");
        return row.append("<outputEntry><text>" + output + "</text></outputEntry></rule>\n")
                .toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
