package org.wadeplan.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.decon.RoundCopies;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.DayForecast;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
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

    @Test
    void thunderAndAVehicleWithoutAnInspectionAreNamed() {
        Round quiet = DemoRound.resolved();
        Round stormy = RoundCopies.with(
                RoundCopies.with(
                        quiet,
                        "forecast",
                        quiet.forecast().stream()
                                .map(day -> new DayForecast(
                                        day.date(),
                                        day.airTempMinC(),
                                        day.airTempMaxC(),
                                        day.humidityPct(),
                                        day.windKmH(),
                                        day.rainMm(),
                                        Optional.of(true),
                                        day.source()))
                                .toList()),
                "store",
                new Store(
                        quiet.store().kitSets(),
                        quiet.store().items().stream()
                                .map(RoundPlannerTest::withoutInspection)
                                .toList(),
                        quiet.store().needs(),
                        quiet.store().packSeconds(),
                        quiet.store().voltageCeilings()));

        assertThat(codes(stormy)).contains("thunder-forecast", "vehicle-without-certificate");
        assertThat(codes(quiet)).doesNotContain("thunder-forecast", "vehicle-without-certificate");
    }

    private static List<String> codes(Round round) {
        PlanOptions constructed = new PlanOptions(OptionalLong.empty(), 0);
        return RoundPlanner.plan(round, constructed, Progress.NONE).findings().stream()
                .map(Problem::code)
                .toList();
    }

    private static StoreItem withoutInspection(StoreItem item) {
        return !item.kind().equals("vehicle")
                ? item
                : new StoreItem(
                        item.id(),
                        item.kind(),
                        item.label(),
                        item.quantity(),
                        item.unit(),
                        item.kitSet(),
                        item.material(),
                        item.state(),
                        item.stateNote(),
                        item.availableFrom(),
                        item.availableUntil(),
                        item.expires(),
                        item.healthPct(),
                        List.of());
    }
}
