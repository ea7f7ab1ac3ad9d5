package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.ReferenceTable.Row;

/** The scenario's own table of expected rules, site by site. */
class MethodChooserReferenceTest {

    static List<Row> sites() {
        return ScenarioSites.rows();
    }

    @ParameterizedTest
    @MethodSource("sites")
    void theCorrectedTableGivesTheExpectedRule(Row row) {
        MethodOutcome outcome = MethodChooser.decide(
                TestTables.corrected(), MethodChooser.caseOf(ScenarioSites.named(row.text("id")), List.of()));
        assertThat(outcome).isInstanceOf(MethodOutcome.Chosen.class);
        MethodOutcome.Chosen chosen = (MethodOutcome.Chosen) outcome;
        assertThat(chosen.rule()).isEqualTo((int) row.number("rule"));
        assertThat(chosen.method()).isEqualTo(row.text("method"));
        assertThat(chosen.crewMin()).isEqualTo(OptionalInt.of((int) row.number("crew_min")));
        assertThat(chosen.unknown()).isEmpty();
    }
}
