package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.method.TestTables.dmn;
import static org.wadeplan.planner.method.TestTables.input;
import static org.wadeplan.planner.method.TestTables.methodOutput;
import static org.wadeplan.planner.method.TestTables.rule;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;

class DecisionTableReaderTest {

    private static final String DEPTH = input("max_depth_m", "number");

    @Test
    void readsTheCorrectedTableWhole(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("Methode für Bäche.dmn");
        Files.writeString(file, TestTables.resource("survey-method.dmn"));
        Checked<DecisionTable> read = DecisionTableReader.read(file, "method.dmn");
        assertThat(read.problems()).isEmpty();
        DecisionTable table = read.value().orElseThrow();
        assertThat(table.name()).isEqualTo("survey-method");
        assertThat(table.hitPolicy()).isEqualTo(HitPolicy.UNIQUE);
        assertThat(table.inputs())
                .extracting(TableInput::name)
                .containsExactly(
                        "wet_state",
                        "depth_velocity_m2s",
                        "max_depth_m",
                        "conductivity_us_cm",
                        "clarity_m",
                        "water_temp_c",
                        "night_access");
        assertThat(table.outputs()).extracting(TableOutput::name).containsExactly("method", "crew_min");
        assertThat(table.rules()).hasSize(16);
        TableRule rule = table.rule(6).orElseThrow();
        assertThat(rule.cells()).extracting(TableCell::text).contains("(20..23]");
        assertThat(rule.outputs()).containsExactly(Optional.of("EFISH_AM"), Optional.of("3"));
        assertThat(table.rule(3).orElseThrow().outputs()).containsExactly(Optional.of("DEFER"), Optional.empty());
        assertThat(table.hash()).matches("[0-9a-f]{64}");
    }

    @Test
    void hashesTheBytesOfTheFile() {
        String xml = TestTables.resource("survey-method.dmn");
        String hash = TestTables.read(xml).value().orElseThrow().hash();
        assertThat(TestTables.read(xml).value().orElseThrow().hash()).isEqualTo(hash);
        assertThat(TestTables.read(xml + " ").value().orElseThrow().hash()).isNotEqualTo(hash);
    }

    /** Namespaces: OMG, DMN 1.1 to 1.5, the schema's target namespace of each version. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://www.omg.org/spec/DMN/20151101/dmn.xsd",
                "http://www.omg.org/spec/DMN/20180521/MODEL/",
                "https://www.omg.org/spec/DMN/20191111/MODEL/",
                "https://www.omg.org/spec/DMN/20211108/MODEL/",
                "https://www.omg.org/spec/DMN/20230324/MODEL/"
            })
    void readsEveryVersionOfTheStandardFrom11To15(String namespace) {
        String xml = TestTables.resource("survey-method.dmn")
                .replace("https://www.omg.org/spec/DMN/20191111/MODEL/", namespace);
        assertThat(TestTables.read(xml).hasErrors()).isFalse();
    }

    @Test
    void refusesAnotherNamespace() {
        String xml = TestTables.resource("survey-method.dmn").replace("20191111", "20990101");
        assertThat(codes(TestTables.read(xml))).containsExactly("dmn-namespace");
    }

    /** The planted file of the scenario: a bad cell, an unknown input and no hit policy, all told at once. */
    @Test
    void reportsABadCellWithRuleColumnAndPositionAndStatesTheDefaultHitPolicy() {
        Checked<DecisionTable> read = TestTables.read(dmn(
                "",
                input("flow", "number")
                        + input("conductivity_us_cm", "number")
                        + methodOutput()
                        + rule("-", "<15", "TRAP")
                        + rule(">0.9", "[600..15]", "EFISH")));
        assertThat(read.problems())
                .extracting(Problem::sentence)
                .containsExactly(
                        "method.dmn, line 8 (rule 2), column conductivity_us_cm: \"[600..15]\", at character 1: "
                                + "[600..15] ends before it starts. Allowed: the smaller number first, such as [15..600]. "
                                + "Do: correct the cell in method.dmn",
                        "method.dmn, line 3: no hit policy, so UNIQUE holds by the DMN standard: at most one rule may "
                                + "match. Allowed: a hit policy that is written down. "
                                + "Do: write hitPolicy=\"UNIQUE\" if that is meant");
        assertThat(read.value().orElseThrow().inputs())
                .extracting(TableInput::name)
                .contains("flow");
        assertThat(read.value().orElseThrow().rules())
                .extracting(TableRule::number)
                .containsExactly(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"COLLECT", "C+", "unique", "BEST"})
    void refusesEveryOtherHitPolicyByName(String policy) {
        Checked<DecisionTable> read =
                TestTables.read(dmn("hitPolicy=\"" + policy + "\"", DEPTH + methodOutput() + rule("-", "TRAP")));
        assertThat(read.hasErrors()).isTrue();
        assertThat(read.problems().get(0).found()).isEqualTo("the hit policy " + policy);
    }

    @Test
    void reportsEveryFaultAtOnce() {
        String xml = dmn(
                "hitPolicy=\"UNIQUE\"",
                DEPTH
                        + input("depth * 2", "number")
                        + input("max_depth_m", "tDepth")
                        + methodOutput()
                        + rule("-", "-", "TRAP")
                        + rule("0,8..", "-", "\"x\"", "TRAP"));
        assertThat(codes(TestTables.read(xml)))
                .containsExactlyInAnyOrder(
                        "input-beyond-name",
                        "input-twice",
                        "input-type-refused",
                        "cell-count",
                        "cell-beyond-unary-test");
    }

    @Test
    void refusesADefaultOutputBecauseItWouldHideAGap() {
        String xml = dmn(
                "hitPolicy=\"UNIQUE\"",
                DEPTH
                        + "<output name=\"method\"><defaultOutputEntry><text>\"TRAP\"</text></defaultOutputEntry></output>"
                        + rule("-", "TRAP"));
        assertThat(codes(TestTables.read(xml))).containsExactly("default-output-refused");
    }

    @Test
    void refusesAnOutputThatIsNotALiteral() {
        String xml = dmn("hitPolicy=\"UNIQUE\"", DEPTH + methodOutput() + rule("-", "A\" + \"B"));
        assertThat(codes(TestTables.read(xml))).containsExactly("output-beyond-literal");
    }

    @Test
    void warnsWhereACommaMayBeADecimalCommaAndRefusesItAfterAComparison() {
        String list = dmn("hitPolicy=\"UNIQUE\"", DEPTH + methodOutput() + rule("0,8", "TRAP"));
        assertThat(codes(TestTables.read(list))).containsExactly("cell-decimal-comma");
        assertThat(TestTables.read(list).hasErrors()).isFalse();
        String comparison = dmn("hitPolicy=\"UNIQUE\"", DEPTH + methodOutput() + rule("<=0,8", "TRAP"));
        assertThat(TestTables.read(comparison).hasErrors()).isTrue();
    }

    @Test
    void readsEmptyCellsAsAnyValueAndSaysSo() {
        String xml = dmn("hitPolicy=\"UNIQUE\"", DEPTH + methodOutput() + rule("", "TRAP"));
        assertThat(codes(TestTables.read(xml))).containsExactly("cells-empty");
        assertThat(TestTables.read(xml).hasErrors()).isFalse();
    }

    @Test
    void refusesAFileThatMultipliesEntities() {
        String bomb = """
                <!DOCTYPE bomb [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">
                <!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;"><!ENTITY d "&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;">]>
                <definitions xmlns="https://www.omg.org/spec/DMN/20191111/MODEL/">&d;&d;&d;</definitions>
                """;
        assertThat(codes(TestTables.read(bomb))).containsExactly("dmn-doctype");
    }

    @Test
    void refusesAFileThatReachesForAnotherFile(@TempDir Path folder) throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
        String xml = "<!DOCTYPE x [<!ENTITY s SYSTEM \"" + secret.toUri() + "\">]>\n<definitions>&s;</definitions>";
        assertThat(codes(TestTables.read(xml))).containsExactly("dmn-doctype");
    }

    @Test
    void refusesDeepNestingAndLargeFiles(@TempDir Path folder) throws IOException {
        String deep = "<a>".repeat(5000) + "</a>".repeat(5000);
        assertThat(codes(TestTables.read(deep))).containsExactly("dmn-too-deep");
        Path large = Files.write(folder.resolve("large.dmn"), new byte[DecisionTableReader.LARGEST_BYTES + 1]);
        assertThat(codes(DecisionTableReader.read(large, "large.dmn"))).containsExactly("dmn-too-large");
    }

    @Test
    void tellsAMissingAnEmptyAndABrokenFileApart(@TempDir Path folder) {
        assertThat(codes(DecisionTableReader.read(folder.resolve("no.dmn"), "no.dmn")))
                .containsExactly("dmn-unreadable");
        assertThat(codes(TestTables.read(""))).containsExactly("dmn-empty");
        Checked<DecisionTable> cut =
                TestTables.read(TestTables.resource("survey-method.dmn").substring(0, 900));
        assertThat(codes(cut)).containsExactly("dmn-not-xml");
        assertThat(cut.problems().get(0).place().line()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR"})
    void saysTheSameInEveryLocale(String tag) {
        String broken = TestTables.resource("survey-method.dmn").replace("[15..600]", "[600..15]");
        Checked<DecisionTable> expected = TestTables.read(broken);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(TestTables.read(broken)).isEqualTo(expected);
        } finally {
            Locale.setDefault(before);
        }
    }

    private static List<String> codes(Checked<DecisionTable> read) {
        return read.problems().stream().map(Problem::code).toList();
    }
}
