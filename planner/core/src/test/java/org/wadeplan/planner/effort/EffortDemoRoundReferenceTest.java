package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.ReferenceTable.Row;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.round.Round;

/** The demo round's times and packs against the scenario's own table. */
class EffortDemoRoundReferenceTest {

    private static final Round ROUND = DemoRound.resolved();
    private static final List<VisitEffort> EFFORTS = EffortPlanner.plan(ROUND, MethodChooser.decide(ROUND));

    static List<Row> parts() {
        return ReferenceTable.read("effort-scenario.csv");
    }

    @ParameterizedTest
    @MethodSource("parts")
    void timesAndPacksMatchTheScenario(Row row) {
        VisitEffort visit = EFFORTS.stream()
                .filter(effort -> effort.site().equals(row.text("site")))
                .findFirst()
                .orElseThrow();
        PartEffort part = visit.parts().stream()
                .filter(effort -> effort.part().word().equals(row.text("part")))
                .findFirst()
                .orElseThrow();
        int tolerance = (int) row.number("tolerance_min");
        assertThat(part.p50Min()).isCloseTo((int) row.number("p50_min"), within(tolerance));
        assertThat(part.p80Min()).isCloseTo((int) row.number("p80_min"), within(tolerance));
        row.optional("packs")
                .ifPresent(packs ->
                        assertThat(visit.batteries().orElseThrow().packs()).isEqualTo((int) packs));
        assertThat(visit.batteries().isPresent())
                .isEqualTo(row.optional("packs").isPresent());
    }

    @Test
    void nothingStandsInTheWayOfAFigure() {
        assertThat(EFFORTS).hasSize(14);
        assertThat(EffortPlanner.findings(ROUND, MethodChooser.decide(ROUND))).isEmpty();
    }

    /** Demo scenario 4.2: OUN-02B has no history; about 2900 s is what the scenario models for it. */
    @Test
    void theFallbackSiteIsModelledOnTheRoundsOwnVisits() {
        VisitEffort visit = EFFORTS.stream()
                .filter(effort -> effort.site().equals("OUN-02B"))
                .findFirst()
                .orElseThrow();
        assertThat(visit.settings()).isEmpty();
        assertThat(visit.batteries().orElseThrow().expectedShockS()).isCloseTo(2900, within(150));
    }
}
