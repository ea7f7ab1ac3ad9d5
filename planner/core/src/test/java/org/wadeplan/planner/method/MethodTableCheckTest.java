package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.wadeplan.planner.method.TestTables.dmn;
import static org.wadeplan.planner.method.TestTables.input;
import static org.wadeplan.planner.method.TestTables.methodOutput;
import static org.wadeplan.planner.method.TestTables.rule;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;

class MethodTableCheckTest {

    private static final List<Method> METHODS = Stream.of(
                    "EFISH", "EFISH_AM", "TRAP", "SPOT", "RECORD_DRY", "DEFER", "REFER")
            .map(id -> new Method(id, id, MethodKind.NONE, List.of(), "invented"))
            .toList();

    @Test
    void theScenarioTablesNameOnlyWhatTheRoundKnows() {
        assertThat(MethodTableCheck.problems(TestTables.corrected(), METHODS)).isEmpty();
        assertThat(MethodTableCheck.problems(TestTables.received(), METHODS)).isEmpty();
    }

    @Test
    void reportsUnknownInputsWordsMethodsAndCrewsTogether() {
        DecisionTable table = table(input("flow", "number") + input("wet_state", "string")
                + input("max_depth_m", "string") + methodOutput() + "<output name=\"crew_min\"/>"
                + rule("-", "\"flowing\"", "-", "EFISH").replace("</rule>", number("3"))
                + rule("-", "\"damp\"", "-", "ZAP").replace("</rule>", number("2.5")));
        assertThat(MethodTableCheck.problems(table, METHODS))
                .extracting(Problem::code, problem -> problem.place().toString())
                .containsExactlyInAnyOrder(
                        tuple("input-unknown", "method.dmn, column flow"),
                        tuple("input-type-wrong", "method.dmn, column max_depth_m"),
                        tuple("word-unknown", "method.dmn, rule 2, column wet_state"),
                        tuple("method-unknown", "method.dmn, rule 2, column method"),
                        tuple("crew-min-not-whole", "method.dmn, rule 2, column crew_min"));
    }

    @Test
    void saysWhichOutputGivesTheMethodWhereThereAreSeveral() {
        DecisionTable table = table(input("max_depth_m", "number")
                + "<output name=\"gear\"/><output name=\"crew_min\"/>"
                + rule("-", "EFISH").replace("</rule>", number("3")));
        assertThat(MethodTableCheck.problems(table, METHODS))
                .extracting(Problem::code)
                .containsExactly("method-output-missing");
    }

    @Test
    void warnsOfSiteValuesThatTheTableIsNotMeantFor() {
        DecisionTable table =
                table("<input><inputExpression typeRef=\"number\"><text>conductivity_us_cm</text></inputExpression>"
                        + "<inputValues><text>[0..1000]</text></inputValues></input>"
                        + methodOutput() + rule("-", "TRAP"));
        assertThat(MethodFindings.outsideTable(table, ScenarioSites.all(), List.of()))
                .extracting(Problem::sentence)
                .containsExactly("sites.csv, PEL-01, column conductivity_us_cm: 2400 µS/cm, which method.dmn is not "
                        + "meant for. Allowed: at least 0 and at most 1000 µS/cm. "
                        + "Do: check the value, or ask who keeps the table");
    }

    private static String number(String value) {
        return "<outputEntry><text>" + value + "</text></outputEntry></rule>";
    }

    private static DecisionTable table(String inside) {
        return TestTables.read(dmn("hitPolicy=\"UNIQUE\"", inside)).value().orElseThrow();
    }
}
