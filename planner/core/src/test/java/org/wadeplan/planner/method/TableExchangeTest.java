package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;

class TableExchangeTest {

    private static final String HEAD = """
            table,small
            hit policy,UNIQUE
            rule,wet_state,max_depth_m,night_access,method,annotation
            kind,input,input,input,output,annotation
            type,string,number,boolean,string,
            """;

    @Test
    void throughASpreadsheetAndBackOntoItsFileATableStaysByteForByte() {
        String original = TestTables.resource("survey-method.dmn");
        DecisionTable table = TestTables.corrected();
        DecisionTable back = csv(CsvTableWriter.text(table)).value().orElseThrow();
        assertThat(back.rules().stream().map(TableRule::outputs).toList())
                .isEqualTo(table.rules().stream().map(TableRule::outputs).toList());
        assertThat(written(original, table, back)).isEqualTo(original);
    }

    @Test
    void oneCellChangedInTheSpreadsheetChangesThatCellAlone() {
        String original = TestTables.resource("survey-method.dmn");
        DecisionTable table = TestTables.corrected();
        String text = CsvTableWriter.text(table).replace("(0.8..2.0]", "(0.9..2.0]");
        assertThat(written(original, table, csv(text).value().orElseThrow()))
                .isEqualTo(original.replace("(0.8..2.0]", "(0.9..2.0]"));
    }

    @Test
    void commentsAndForeignPartsOfTheFileStay() {
        String original = TestTables.dmn(
                "hitPolicy=\"UNIQUE\" x:colour=\"a > b\" xmlns:x=\"urn:x\"",
                TestTables.input("max_depth_m", "number")
                        + TestTables.methodOutput()
                        + "<!-- <rule> in a comment -->"
                        + TestTables.rule("<=1", "A")
                        + "<x:layout><x:rule/></x:layout>"
                        + TestTables.rule(">1", "B"));
        DecisionTable table = TestTables.read(original).value().orElseThrow();
        String text = CsvTableWriter.text(table).replace(">1", ">2");
        assertThat(written(original, table, csv(text).value().orElseThrow()))
                .isEqualTo(original.replace("&gt;1", "&gt;2"));
    }

    @Test
    void aTableWrittenAsDmnReadsBackTheSame() {
        DecisionTable table = TestTables.corrected();
        Checked<DecisionTable> back = TestTables.read(DmnWriter.text(table));
        assertThat(back.problems()).isEmpty();
        assertThat(back.value().orElseThrow().rules()).isEqualTo(table.rules());
    }

    @Test
    void wordsNeedNoQuotationMarksInASpreadsheet() {
        DecisionTable table = csv(HEAD + "r1,\"dry, pools\",-,-,TRAP,\nr2,not(dry),<=0.8,true,EFISH,calm\n")
                .value()
                .orElseThrow();
        assertThat(table.rules().get(0).cells().get(0).text()).isEqualTo("\"dry\",\"pools\"");
        assertThat(table.rules().get(1).cells().get(0).test())
                .isEqualTo(UnaryTestParser.parse("not(\"dry\")", ValueType.TEXT).fold((test, doubts) -> test, fault -> {
                    throw new IllegalStateException(fault.found());
                }));
        assertThat(table.rules().get(1).annotation()).isEqualTo("calm");
    }

    @Test
    void everyFaultOfASpreadsheetIsReportedAtOnceWithRowColumnAndPosition() {
        String text = HEAD
                + "r1,dry,\"<=0,8\",-,TRAP,\n"
                + "r2,pools,<=0.8 m,-,TRAP,\n"
                + "r2,flowing,[6..1],yes,EFISH,\n"
                + "r4,flowing,>1,true,EFISH,a,b\n";
        assertThat(csv(text).problems())
                .extracting(Problem::sentence)
                .anyMatch(words -> words.contains("line 6 (rule 1), column max_depth_m: \"<=0,8\", at character 4"))
                .anyMatch(words -> words.contains("line 7 (rule 2), column max_depth_m: \"<=0.8 m\", at character 7"))
                .anyMatch(words -> words.contains("line 8 (rule 3), column max_depth_m: \"[6..1]\", at character 1"))
                .anyMatch(words -> words.contains("line 8 (rule 3), column night_access: \"yes\", at character 1"))
                .anyMatch(words -> words.contains("line 8 (rule 3): the id r2, which rule 2 has too"))
                .anyMatch(words -> words.contains("line 9 (r4): 7 cells in this row, and 6 columns"));
    }

    @Test
    void aTypeThatTheFileDefinesBringsItsAllowedValues() {
        String xml = TestTables.dmn(
                        "hitPolicy=\"UNIQUE\"",
                        TestTables.input("bed", "tBed") + TestTables.methodOutput() + TestTables.rule("\"mud\"", "A"))
                .replace(
                        "<decision id",
                        "<itemDefinition name=\"tBed\"><typeRef>string</typeRef>"
                                + "<allowedValues><text>\"mud\",\"sand\"</text></allowedValues></itemDefinition><decision id");
        TableInput input = TestTables.read(xml).value().orElseThrow().inputs().get(0);
        assertThat(input.type()).isEqualTo(ValueType.TEXT);
        assertThat(input.allowed().orElseThrow().text()).isEqualTo("\"mud\",\"sand\"");
    }

    @Test
    void priorityWithoutAnOrderOfOutputsIsRefused() {
        String xml = TestTables.dmn(
                "hitPolicy=\"PRIORITY\"",
                TestTables.input("max_depth_m", "number") + TestTables.methodOutput() + TestTables.rule("-", "A"));
        assertThat(TestTables.read(xml).problems())
                .extracting(Problem::code)
                .isEqualTo(List.of("output-order-missing"));
    }

    private static Checked<DecisionTable> csv(String text) {
        return DecisionTableReader.read(text.getBytes(StandardCharsets.UTF_8), "method.csv");
    }

    private static String written(String original, DecisionTable before, DecisionTable after) {
        byte[] bytes = DmnEdit.written(original.getBytes(StandardCharsets.UTF_8), before, after);
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
