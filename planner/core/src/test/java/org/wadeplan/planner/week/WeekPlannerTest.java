package org.wadeplan.planner.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.effort.EffortPlanner;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.kit.VisitNeeds;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.verify.WeekVerifier;

class WeekPlannerTest {

    private static List<String> errors(WeekInputs inputs, WeekPlan plan) {
        return WeekVerifier.verify(inputs.round(), Plans.of(inputs, plan)).stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .map(Problem::sentence)
                .toList();
    }

    /** Invented scenario 4.8: its reference plan proves that twelve visits and the dry check fit from Monday to Friday. */
    @Test
    void theResolvedDemoWeekHoldsEveryVisitFromMondayToFriday() {
        Round round = IlvermoorWeek.resolved();
        WeekInputs inputs = IlvermoorWeek.inputs(round);

        WeekPlan plan = WeekPlanner.plan(inputs, 1500, Progress.NONE);

        assertThat(plan.unplaced()).extracting(Unplaced::site).containsExactly("OUN-02");
        assertThat(plan.crewDays())
                .extracting(CrewDay::date)
                .isSubsetOf(round.header().days());
        assertThat(errors(inputs, plan)).isEmpty();
    }

    /** The same week with the real steps before it. */
    @Test
    void theResolvedDemoWeekHoldsEveryVisitWithTheRealStepsBeforeIt() {
        Round round = IlvermoorWeek.resolved();
        WeekInputs byHand = IlvermoorWeek.inputs(round);
        List<VisitEffort> efforts = EffortPlanner.plan(round, byHand.decisions());
        WeekInputs inputs = new WeekInputs(
                round,
                byHand.decisions(),
                efforts,
                VisitNeeds.of(round, byHand.decisions(), efforts),
                TurnaroundPlanner.table(round));

        WeekPlan plan = WeekPlanner.plan(inputs, 200, Progress.NONE);

        assertThat(plan.unplaced()).extracting(Unplaced::site).containsExactly("OUN-02");
        assertThat(errors(inputs, plan)).isEmpty();
    }

    @Test
    void theSameInputsGiveTheSamePlan() {
        WeekInputs inputs = IlvermoorWeek.inputs(IlvermoorWeek.resolved());

        assertThat(WeekPlanner.plan(inputs, 5, Progress.NONE)).isEqualTo(WeekPlanner.plan(inputs, 5, Progress.NONE));
    }

    @Test
    void aRefusedSiteIsExplainedAndItsReserveStandsInItsPlace() {
        WeekInputs inputs = IlvermoorWeek.inputs(RoundChange.of(IlvermoorWeek.resolved())
                .keepSites(site -> site.id().startsWith("OUN-02"))
                .round());

        WeekPlan plan = WeekPlanner.plan(inputs, 0, Progress.NONE);

        assertThat(plan.unplaced()).singleElement().satisfies(one -> assertThat(one.reasons())
                .contains("Consent C-OUN-02 for OUN-02 was refused.", "OUN-02B stands in its place."));
        assertThat(plan.placements()).singleElement().satisfies(one -> {
            assertThat(one.site()).isEqualTo("OUN-02B");
            assertThat(one.binding()).contains("in place of OUN-02: Consent C-OUN-02 for OUN-02 was refused.");
        });
    }

    @Test
    void aSiteThatFitsNowhereSaysWhyForEachCrewDay() {
        WeekInputs inputs = IlvermoorWeek.inputs(RoundChange.of(IlvermoorWeek.resolved())
                .keepSites(site -> site.id().equals("PEL-02"))
                .tides(List.of())
                .round());

        WeekPlan plan = WeekPlanner.plan(inputs, 0, Progress.NONE);

        assertThat(plan.crewDays()).isEmpty();
        assertThat(plan.unplaced()).singleElement().satisfies(one -> assertThat(String.join("\n", one.reasons()))
                .contains("PEL-02 is tidal and the tide table has no low water for it on 2027-09-10."));
    }

    @Test
    void withoutCrewsNothingIsPlacedAndThatIsSaid() {
        WeekInputs inputs = IlvermoorWeek.inputs(RoundChange.of(IlvermoorWeek.resolved())
                .keepRoster(day -> false)
                .round());

        WeekPlan plan = WeekPlanner.plan(inputs, 10, Progress.NONE);

        assertThat(plan.crewDays()).isEmpty();
        assertThat(plan.unplaced()).hasSize(14);
    }
}
