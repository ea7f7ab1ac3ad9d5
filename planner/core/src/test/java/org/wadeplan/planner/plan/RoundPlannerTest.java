package org.wadeplan.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.week.Progress;

class RoundPlannerTest {

    private static final PlanOptions USUAL = new PlanOptions(OptionalLong.empty(), PlanOptions.USUAL_ITERATIONS);

    @Test
    void theResolvedWeekIsPlannedWholeAndPassesTheIndependentCheck() {
        RoundPlan plan = RoundPlanner.plan(DemoRound.resolved(), USUAL, Progress.NONE);

        assertThat(plan.complete()).isTrue();
        assertThat(PlanCheck.findings(DemoRound.resolved(), plan))
                .filteredOn(problem -> problem.severity() == Severity.ERROR)
                .isEmpty();
        assertThat(plan.reaches()).hasSize(14);
    }

    @Test
    void theSameRoundGivesTheSameBytes() {
        assertThat(PlanJson.text(RoundPlanner.plan(DemoRound.resolved(), USUAL, Progress.NONE)))
                .isEqualTo(PlanJson.text(RoundPlanner.plan(DemoRound.resolved(), USUAL, Progress.NONE)));
    }

    @Test
    void theTroubledWeekDoesNotPretend() {
        RoundPlan plan = RoundPlanner.plan(DemoRound.troubled(), USUAL, Progress.NONE);

        List<Problem> errors = plan.findings().stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .toList();
        assertThat(errors).extracting(Problem::code).contains("kit-short", "not-authorised");
    }
}
