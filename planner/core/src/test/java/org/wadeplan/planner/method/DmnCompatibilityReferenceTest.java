package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;

/**
 * Cases of the DMN technology compatibility kit (dmn-tck/tck at 0dbcaf9b, Apache-2.0), where a copy lies beside the
 * project. What goes beyond tables of unary tests with one answer must be refused by name.
 */
class DmnCompatibilityReferenceTest {

    @ParameterizedTest
    @CsvSource({"0004-simpletable-U", "0110-outputOrder-hitpolicy"})
    void casesOfTablesWithUnaryTestsComeOutAsTheKitExpects(String name) throws IOException {
        Checked<DecisionTable> read = DecisionTableReader.read(kit(name + ".dmn"), name);
        assertThat(read.problems()).isEmpty();
        checkCases(read.value().orElseThrow(), name);
    }

    /** The case's hit policy with the order of its output values. */
    @Test
    void ofSeveralRulesTheOneWhoseOutputStandsFirstInTheListCounts() throws IOException {
        String name = "0006-simpletable-P1";
        Checked<DecisionTable> read = DecisionTableReader.read(kit(name + ".dmn"), name);
        assertThat(read.problems()).isEmpty();
        assertThat(read.value().orElseThrow().hitPolicy()).isEqualTo(HitPolicy.PRIORITY);
        checkCases(read.value().orElseThrow(), name);
    }

    /** The same tables without their default outputs, which none of the kit's cases reaches: the hit policies hold. */
    @ParameterizedTest
    @CsvSource({"0108-first-hitpolicy, FIRST", "0117-multi-any-hitpolicy, ANY"})
    void casesOfOtherSingleHitPoliciesComeOutOnceTheirDefaultOutputIsTakenAway(String name, HitPolicy policy)
            throws IOException {
        String xml =
                Files.readString(kit(name + ".dmn")).replaceAll("(?s)<defaultOutputEntry.*?</defaultOutputEntry>", "");
        Checked<DecisionTable> read = DecisionTableReader.read(xml.getBytes(StandardCharsets.UTF_8), name);
        assertThat(read.problems()).isEmpty();
        assertThat(read.value().orElseThrow().hitPolicy()).isEqualTo(policy);
        checkCases(read.value().orElseThrow(), name);
    }

    @ParameterizedTest
    @CsvSource({
        "0108-first-hitpolicy, 'a default output, used where no rule matches'",
        "0117-multi-any-hitpolicy, 'a default output, used where no rule matches'"
    })
    void whatGoesBeyondIsRefusedByName(String name, String found) throws IOException {
        Checked<DecisionTable> read = DecisionTableReader.read(kit(name + ".dmn"), name);
        assertThat(read.hasErrors()).isTrue();
        assertThat(read.problems()).extracting(Problem::found).contains(found);
    }

    private static void checkCases(DecisionTable table, String name) throws IOException {
        byte[] bytes = Files.readAllBytes(kit(name + "-test-01.xml"));
        List<XmlElement> cases = XmlTree.read(bytes, name)
                .value()
                .orElseThrow()
                .children("testCase")
                .toList();
        assertThat(cases).hasSize(3);
        for (XmlElement one : cases) {
            TableAnswer answer = Completions.of(table, inputs(one)).answers().get(0);
            assertThat(outputs(table, answer))
                    .as("%s case %s", name, one.attribute("id"))
                    .isEqualTo(expected(one));
        }
    }

    private static Map<String, CaseValue> inputs(XmlElement one) {
        Map<String, CaseValue> values = new LinkedHashMap<>();
        one.children("inputNode").forEach(node -> {
            String text = node.child("value").orElseThrow().text();
            values.put(
                    node.attribute("name").orElseThrow(),
                    switch (text) {
                        case "true", "false" -> CaseValue.of(Boolean.parseBoolean(text));
                        default ->
                            Character.isDigit(text.charAt(0))
                                    ? new CaseValue.Quantity(new BigDecimal(text))
                                    : CaseValue.of(text);
                    });
        });
        return values;
    }

    /** One result, or one for each item of a list. */
    private static List<Map<String, String>> expected(XmlElement one) {
        XmlElement expected =
                one.child("resultNode").orElseThrow().child("expected").orElseThrow();
        return expected.child("list")
                .map(list -> list.children("item")
                        .map(DmnCompatibilityReferenceTest::result)
                        .toList())
                .orElseGet(() -> List.of(result(expected)));
    }

    private static Map<String, String> result(XmlElement expected) {
        Map<String, String> outputs = new LinkedHashMap<>();
        expected.child("value").ifPresent(value -> outputs.put("", value.text()));
        expected.children("component")
                .forEach(part -> outputs.put(
                        part.attribute("name").orElseThrow(),
                        part.child("value").orElseThrow().text()));
        return outputs;
    }

    private static List<Map<String, String>> outputs(DecisionTable table, TableAnswer answer) {
        return answer.rules().stream().map(rule -> outputs(table, rule)).toList();
    }

    private static Map<String, String> outputs(DecisionTable table, TableRule rule) {
        Map<String, String> outputs = new LinkedHashMap<>();
        IntStream.range(0, rule.outputs().size())
                .forEach(i -> outputs.put(
                        table.outputs().get(i).name(), rule.outputs().get(i).orElseThrow()));
        return outputs;
    }

    /** The kit's file beside the project's root, wherever the tests are started from. */
    private static Path kit(String file) {
        Optional<Path> found = Stream.iterate(
                        Path.of("").toAbsolutePath(), folder -> folder != null, folder -> folder.getParent())
                .map(folder -> folder.resolve("shared/data/dmn-tck").resolve(file))
                .filter(Files::exists)
                .findFirst();
        assumeTrue(found.isPresent(), "skipped: no copy of the DMN compatibility kit beside the project");
        return found.orElseThrow();
    }
}
