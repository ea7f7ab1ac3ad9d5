package org.wadeplan.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Round;

class TurnaroundCheckTest {

    private static final Round ROUND = DemoRound.resolved();
    private static final List<Turnaround> DUE = TurnaroundPlanner.table(ROUND).rows();

    @Test
    void findsNothingInTheTableThatTheRoundGives() {
        assertThat(TurnaroundCheck.check(ROUND, new TurnaroundTable(DUE))).isEmpty();
    }

    @Test
    void namesTheRowFromWhichACoverWasStruck() {
        Turnaround hard =
                DUE.stream().filter(row -> !row.covers().isEmpty()).findFirst().orElseThrow();
        Turnaround easier = new Turnaround(
                hard.kitSet(),
                hard.fromWater(),
                hard.toWater(),
                hard.steps(),
                hard.crewMin(),
                hard.unattendedMin(),
                List.of(),
                hard.uncovered(),
                hard.reason());

        assertThat(found(
                        DUE.stream().map(row -> row.equals(hard) ? easier : row).toList()))
                .contains("what the plan asks between waters is not what the round's tables ask: " + hard.kitSet()
                        + " from " + hard.fromWater() + " to " + hard.toWater());
    }

    @Test
    void namesTheFirstRowsThatAreMissingAndCountsTheOthers() {
        assertThat(found(List.of()).orElseThrow())
                .contains(" (missing); ")
                .endsWith("; and " + (DUE.size() - 3) + " more");
    }

    private static Optional<String> found(List<Turnaround> rows) {
        return TurnaroundCheck.check(ROUND, new TurnaroundTable(rows)).map(Problem::found);
    }
}
