package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Round;

/** The demo rounds as a user has them on disk. */
class MethodDemoRoundTest {

    @Test
    void everySiteOfTheDemoGetsTheRuleThatTheScenarioExpects() {
        Round round = DemoRound.resolved();
        Map<String, Integer> expected = ReferenceTable.read("method-scenario-sites.csv").stream()
                .collect(Collectors.toMap(row -> row.text("id"), row -> (int) row.number("rule")));
        List<MethodDecision> decisions = MethodChooser.decide(round);
        assertThat(decisions).hasSize(14);
        assertThat(decisions.stream().collect(Collectors.toMap(MethodDecision::site, decision -> decision.chosen()
                        .orElseThrow()
                        .rule())))
                .isEqualTo(expected);
        assertThat(MethodFindings.of(round, decisions)).isEmpty();
        assertThat(MethodTableCheck.problems(round.methodTable(), round)).isEmpty();
    }

    @Test
    void theDemosTableAsReceivedLeavesTwoSitesOutAndContradictsItselfAtOne() {
        Round round = DemoRound.resolved();
        Path file = DemoRound.folder("ilvermoor").resolve("method_received.dmn");
        DecisionTable received =
                DecisionTableReader.read(file, "method_received.dmn").value().orElseThrow();
        List<MethodDecision> decisions = MethodChooser.decide(received, round.sites(), round.consents());
        assertThat(MethodFindings.of(received, decisions))
                .extracting(Problem::code, problem -> problem.place().row().orElse(""))
                .containsExactly(
                        tuple("method-clash", "site BRN-02"),
                        tuple("method-gap", "site BRN-03"),
                        tuple("method-gap", "site HSK-02"));
    }

    @Test
    void thePlantedBadTableIsReportedWithEveryFault() {
        Path file = DemoRound.folder("ilvermoor-troubled").resolve("bad").resolve("method.dmn");
        Checked<DecisionTable> read = DecisionTableReader.read(file, "method.dmn");
        List<Problem> problems = new ArrayList<>(read.problems());
        read.value()
                .ifPresent(table -> problems.addAll(
                        MethodTableCheck.problems(table, DemoRound.resolved().methods())));
        assertThat(problems.stream().map(Problem::sentence))
                .anyMatch(sentence -> sentence.contains("conductivity_us_cm: \"[600..15]\", at character 1"))
                .anyMatch(sentence -> sentence.contains("no hit policy, so UNIQUE holds"))
                .anyMatch(sentence -> sentence.contains("the input \"flow\" is no condition of a site"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"conductivity_us_cm", "max_depth_m", "clarity_m", "water_temp_c", "wet_state"})
    void aSiteOfWhichOneThingIsNotKnownIsNeverGivenAMethodThatItMightNotHave(String missing) {
        Round round = DemoRound.resolved();
        round.sites().forEach(site -> {
            Map<String, CaseValue> values = MethodChooser.caseOf(site, round.consents());
            values.remove(missing);
            MethodOutcome outcome = MethodChooser.decide(round.methodTable(), values);
            if (outcome instanceof MethodOutcome.Undecided undecided) {
                assertThat(undecided.missing()).contains(missing);
                assertThat(undecided.possibleMethods()).hasSizeGreaterThan(1);
            } else {
                assertThat(outcome).isInstanceOf(MethodOutcome.Chosen.class);
            }
        });
    }
}
