package org.wadeplan.planner.week.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Progress;
import org.wadeplan.planner.week.WeekPlan;

/** Tries to carry a pest past the check, each time by one change to a plan that carries nothing. */
class CarryAttemptsTest {

    private static final Round ROUND = DemoRound.troubled();
    private static final RoundPlan PLAN = RoundPlanner.inForce(ROUND, PlanOptions.usual(), Progress.NONE);

    private static final List<WeekRule> RULES = List.of(
            new KitCleanRule(), new ExposureRule(), new CleaningRule(), new CleaningEvidenceRule(), new DryingRule());

    private static List<String> errors(Round round, WeekPlan week) {
        PlanFacts facts = new PlanFacts(round, with(week));
        return RULES.stream()
                .flatMap(rule -> rule.check(facts).stream())
                .filter(problem -> problem.severity() == Severity.ERROR)
                .map(Problem::sentence)
                .toList();
    }

    private static RoundPlan with(WeekPlan week) {
        return new RoundPlan(
                PLAN.round(),
                PLAN.version(),
                PLAN.reaches(),
                PLAN.decisions(),
                PLAN.efforts(),
                PLAN.permissions(),
                PLAN.turnarounds(),
                week,
                PLAN.kit(),
                PLAN.briefings(),
                PLAN.complete(),
                PLAN.findings());
    }

    private static WeekPlan changed(UnaryOperator<DeconTask> change) {
        WeekPlan week = PLAN.week();
        return new WeekPlan(
                week.crewDays(),
                week.decon().stream().map(change).toList(),
                week.placements(),
                week.unplaced(),
                week.estimatedLegs(),
                week.score());
    }

    /** Changes the cleaning of a set that starts at a time. */
    private static WeekPlan cleaning(String kitSet, String start, UnaryOperator<DeconTask> change) {
        return changed(task ->
                task.kitSet().equals(kitSet) && task.start().equals(Instant.parse(start)) ? change.apply(task) : task);
    }

    private static DeconTask steps(DeconTask task, UnaryOperator<DeconStep> change) {
        return BrokenCleanings.withSteps(task, task.steps().stream().map(change).toList(), task.covers());
    }

    private static DeconStep step(DeconStep step, String word, int minutes, Optional<String> target) {
        return new DeconStep(word, step.label(), minutes, step.crewBusy(), step.resource(), target);
    }

    /** Another set goes to a visit. */
    private static WeekPlan swapped(String site, String kitSet) {
        List<CrewDay> days = new ArrayList<>();
        for (CrewDay day : PLAN.week().crewDays()) {
            List<Activity> activities = day.activities().stream()
                    .map(activity -> activity.kind() == ActivityKind.VISIT
                                    && activity.place().equals(site)
                            ? new Activity(
                                    activity.kind(),
                                    activity.start(),
                                    activity.end(),
                                    activity.place(),
                                    activity.site(),
                                    activity.part(),
                                    activity.method(),
                                    List.of(kitSet),
                                    activity.p50End(),
                                    activity.note())
                            : activity)
                    .toList();
            days.add(new CrewDay(day.crew(), day.date(), day.people(), day.vehicle(), activities));
        }
        WeekPlan week = PLAN.week();
        return new WeekPlan(days, week.decon(), week.placements(), week.unplaced(), week.estimatedLegs(), week.score());
    }

    @Test
    void theAgreedWeekCarriesNothing() {
        assertThat(errors(ROUND, PLAN.week())).isEmpty();
    }

    @Test
    void aSwappedKitSetIsSeen() {
        assertThat(errors(ROUND, swapped("BRN-02", "K3")))
                .anySatisfy(error -> assertThat(error).contains("BRN-02 survey", "K3 may bring into BRN", "from HSK"));
    }

    @Test
    void aSprayInThePlaceOfASoakIsSeen() {
        WeekPlan week = cleaning(
                "K1",
                "2027-09-09T15:05:00Z",
                task -> steps(
                        task,
                        one -> one.step().equals("soak") ? step(one, "spray", one.minutes(), one.target()) : one));

        assertThat(errors(ROUND, week))
                .anySatisfy(error -> assertThat(error).contains("K1 may bring into OUN-L", "ANY from OUN-U"));
    }

    @Test
    void aShortenedSoakIsSeen() {
        WeekPlan week = cleaning(
                "K1",
                "2027-09-09T15:05:00Z",
                task -> steps(
                        task,
                        one -> one.step().equals("soak") ? step(one, "soak", one.minutes() - 1, one.target()) : one));

        assertThat(errors(ROUND, week)).anySatisfy(error -> assertThat(error).contains("steps that last as long"));
    }

    @Test
    void aCoolerBathIsSeen() {
        WeekPlan week = cleaning(
                "K4",
                "2027-09-07T17:50:00Z",
                task -> steps(
                        task,
                        one -> one.step().equals("soak")
                                ? step(one, "soak", one.minutes(), Optional.of("50 °C"))
                                : one));

        assertThat(errors(ROUND, week)).isNotEmpty();
    }

    @Test
    void aMissingSoakIsSeen() {
        WeekPlan week = cleaning(
                "K1",
                "2027-09-09T15:05:00Z",
                task -> BrokenCleanings.withSteps(
                        task,
                        task.steps().stream()
                                .filter(one -> !one.step().equals("soak"))
                                .toList(),
                        task.covers()));

        assertThat(errors(ROUND, week)).isNotEmpty();
    }

    @Test
    void aCleaningCreditedForAPestWithoutARowIsSeen() {
        WeekPlan week = cleaning("K1", "2027-09-09T15:05:00Z", task -> {
            List<Turnaround.Cover> covers = new ArrayList<>(task.covers());
            covers.add(new Turnaround.Cover("LTW", Material.HARD, "oxidiser-bath", EvidenceGrade.A, "by hand"));
            return BrokenCleanings.withSteps(task, task.steps(), covers);
        });

        assertThat(errors(ROUND, week))
                .anySatisfy(error -> assertThat(error).contains("LTW", "a row of treatments that supports it"));
    }

    @Test
    void aReleaseBeforeDryingIsSeen() {
        WeekPlan week = cleaning("K1", "2027-09-09T15:05:00Z", BrokenCleanings::releasedWet);

        assertThat(errors(ROUND, week)).anySatisfy(error -> assertThat(error).contains("0 min to dry"));
    }

    /** The plan forgets it, the store does not. */
    @Test
    void exposureFromLastWeekIsSeen() {
        Store store = ROUND.store();
        List<KitSet> sets = store.kitSets().stream()
                .map(set -> set.id().equals("K4")
                        ? new KitSet(
                                set.id(),
                                set.purpose(),
                                set.materials(),
                                set.state(),
                                List.of("PEL"),
                                set.wetSince(),
                                set.note())
                        : set)
                .toList();
        Round round =
                ROUND.with(new Store(sets, store.items(), store.needs(), store.packSeconds(), store.voltageCeilings()));

        assertThat(errors(round, PLAN.week()))
                .anySatisfy(error -> assertThat(error).contains("K4 may bring into TOL", "LTW from PEL"));
    }

    @Test
    void aCleaningMovedToBeforeTheVisitIsSeen() {
        WeekPlan week = cleaning(
                "K1",
                "2027-09-09T15:05:00Z",
                task -> new DeconTask(
                        task.kitSet(),
                        task.crew(),
                        task.fromWaters(),
                        task.start().minus(Duration.ofHours(8)),
                        task.crewFree().minus(Duration.ofHours(8)),
                        task.released().minus(Duration.ofHours(8)),
                        task.steps(),
                        task.covers(),
                        task.reason()));

        assertThat(errors(ROUND, week)).anySatisfy(error -> assertThat(error).contains("K1 may bring into OUN-L"));
    }

    @Test
    void anItemThatGoesOutUncleanedWithAnotherSetIsAWarning() {
        assertThat(ItemCarryCheck.of(ROUND, PLAN)).extracting(Problem::sentence).anySatisfy(words -> assertThat(words)
                .contains("N1", "goes uncleaned from HSK-01 survey (HSK) to TOL-01 survey (TOL)"));
    }
}
