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
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Progress;
import org.wadeplan.planner.week.WeekPlan;

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

    /** The agreed week of the troubled demo (invented), whole, then with the brushing left out of one cleaning. */
    @Test
    void refusesACleaningWhoseStepsAreThoseOfNoLeg() {
        Round agreed = DemoRound.troubled();
        WeekPlan week =
                RoundPlanner.inForce(agreed, PlanOptions.usual(), Progress.NONE).week();
        DeconTask whole = week.decon().get(0);
        DeconTask unbrushed = new DeconTask(
                whole.kitSet(),
                whole.crew(),
                whole.fromWaters(),
                whole.start(),
                whole.crewFree(),
                whole.released(),
                whole.steps().stream()
                        .filter(step -> !step.step().equals("brush"))
                        .toList(),
                whole.covers(),
                whole.reason());
        WeekPlan edited = new WeekPlan(
                week.crewDays(),
                List.of(unbrushed),
                week.placements(),
                week.unplaced(),
                week.estimatedLegs(),
                week.score());

        assertThat(TurnaroundCheck.cleanings(agreed, week)).isEmpty();
        assertThat(TurnaroundCheck.cleanings(agreed, edited))
                .extracting(Problem::code)
                .containsExactly("cleaning-not-asked");
    }

    private static Optional<String> found(List<Turnaround> rows) {
        return TurnaroundCheck.check(ROUND, new TurnaroundTable(rows)).map(Problem::found);
    }
}
