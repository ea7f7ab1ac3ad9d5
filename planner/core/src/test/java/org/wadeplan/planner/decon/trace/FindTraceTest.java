package org.wadeplan.planner.decon.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.decon.trace.TraceReport.ChangedLeg;
import org.wadeplan.planner.decon.trace.TraceReport.ExposedKit;
import org.wadeplan.planner.decon.trace.TraceReport.OtherWater;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.FieldLog;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Progress;

/**
 * The weed found at TOL-01 on Tuesday 17:20. Expected figures: invented scenario, trouble 9 (90 to 105 minutes, Tuesday ends
 * 19:35, Wednesday 13:35 to 15:20 with 10 minutes left before 15:30).
 */
class FindTraceTest {

    private static final Round ROUND = DemoRound.troubled();
    private static final TraceReport REPORT = trace(ROUND, "2027-09-07T17:20:00Z");

    private static TraceReport trace(Round round, String seen) {
        return FindTrace.of(
                round,
                RoundPlanner.inForce(round, PlanOptions.usual(), Progress.NONE),
                new Find("TOL", "LTW", Instant.parse(seen), Optional.empty(), Optional.empty()));
    }

    private static Round agreed(UnaryOperator<AgreedTask> change) {
        List<AgreedTask> tasks = ROUND.log().agreed().stream().map(change).toList();
        return ROUND.with(new FieldLog(tasks, List.of(), List.of(), List.of()));
    }

    private static UnaryOperator<AgreedTask> later(String kitSet, String start, int minutes) {
        return task -> task.cleaning()
                        && task.kitSets().equals(List.of(kitSet))
                        && task.start().equals(Instant.parse(start))
                ? new AgreedTask(
                        task.date(),
                        task.crew(),
                        task.start().plus(Duration.ofMinutes(minutes)),
                        task.site(),
                        task.part(),
                        task.kitSets(),
                        task.note())
                : task;
    }

    private static AgreedTask withSet(AgreedTask task, String kitSet) {
        return new AgreedTask(
                task.date(), task.crew(), task.start(), task.site(), task.part(), List.of(kitSet), task.note());
    }

    private static ChangedLeg leg(TraceReport report, String kitSet) {
        return report.legs().stream()
                .filter(leg -> leg.kitSet().equals(kitSet))
                .findFirst()
                .orElseThrow();
    }

    private static OtherWater water(TraceReport report, String id) {
        return report.otherWaters().stream()
                .filter(water -> water.water().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> errors(TraceReport report) {
        return report.broken().stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .map(Problem::code)
                .toList();
    }

    @Test
    void k4WasThereBeforeTheSightingAndK2IsToComeAfterIt() {
        List<ExposedKit> sets =
                REPORT.exposed().stream().filter(kit -> !kit.item()).toList();

        assertThat(sets).extracting(ExposedKit::id).containsExactly("K2", "K4");
        assertThat(sets.get(0).before()).isEmpty();
        assertThat(sets.get(1).before())
                .extracting(TraceReport.Stay::where)
                .containsExactly("TOL-02 dry-check", "TOL-01 survey");
        assertThat(sets.get(1).after()).isEmpty();
    }

    @Test
    void theTwoCleaningsAfterTollowGrowFrom90To105Minutes() {
        assertThat(REPORT.legs())
                .extracting(ChangedLeg::kitSet, ChangedLeg::minutesBefore, ChangedLeg::minutesAfter, ChangedLeg::stands)
                .containsExactly(tuple("K4", 90, 105, true), tuple("K2", 90, 105, true));
        assertThat(leg(REPORT, "K4").stepsAfter()).startsWith("brush 20, pick 15, soak 40, rinse 30");
        assertThat(REPORT.unchangedLegs()).isEqualTo(7);
    }

    @Test
    void tuesdayStillLeavesTheRestAndWednesdayTheDeparture() {
        assertThat(leg(REPORT, "K4").crewFree()).isEqualTo(Instant.parse("2027-09-07T19:35:00Z"));
        assertThat(leg(REPORT, "K4").rest().orElse("")).contains("11 h 0 min before Wed 8 Sep 06:50");
        assertThat(leg(REPORT, "K2").crewFree()).isEqualTo(Instant.parse("2027-09-08T15:20:00Z"));
        assertThat(leg(REPORT, "K2").departure().orElse(""))
                .contains("leaves at 15:30 for PEL-01 set at 16:00: 10 min after the cleaning (before the find 25)");
        assertThat(errors(REPORT)).isEmpty();
    }

    @Test
    void hskIsClearBecauseK4WasCleanAndHadNotBeenThere() {
        OtherWater hesk = water(REPORT, "HSK");

        assertThat(hesk.clear()).isTrue();
        assertThat(hesk.receivedNothing()).isTrue();
        assertThat(hesk.because()).anySatisfy(words -> assertThat(words)
                .contains(
                        "K4 was clean and dry when it came to TOL-02 dry-check at Tue 7 Sep 11:05",
                        "so it did not come from HSK with K4"));
    }

    /** What is in the upper Ounder drifts into the lower one, whoever carries what. */
    @Test
    void theWaterBelowOnTheSameStreamIsNeverClear() {
        TraceReport report = FindTrace.of(
                ROUND,
                RoundPlanner.inForce(ROUND, PlanOptions.usual(), Progress.NONE),
                new Find("OUN-U", "LTW", Instant.parse("2027-09-08T10:00:00Z"), Optional.empty(), Optional.empty()));

        assertThat(water(report, "OUN-L").clear()).isFalse();
        assertThat(water(report, "OUN-L").because().get(0)).contains("below on the same stream");
        assertThat(water(report, "HSK").because()).noneMatch(words -> words.contains("below on the same stream"));
    }

    /** The pole net went from the Hesk to Tollow before anybody cleaned it: the trace does not hide that. */
    @Test
    void whatLooseItemsCannotRuleOutIsSaid() {
        assertThat(water(REPORT, "HSK").broughtNothing()).isFalse();
        assertThat(water(REPORT, "HSK").because())
                .anySatisfy(words -> assertThat(words).contains("not ruled out for loose items", "N1"));
    }

    @Test
    void theAgencyAndThePermitHolderAreToldTheSameDay() {
        assertThat(REPORT.notices())
                .extracting(notice -> notice.by() + " " + notice.whom())
                .containsExactly(
                        "2027-09-07 Ilvermoor Rivers Office, office check-in",
                        "2027-09-07 whoever gave permit P-TOL (TOL)");
    }

    @Test
    void suspicionGoesBackToTheLastClearVisit() {
        assertThat(REPORT.span().lastClear()).contains(LocalDate.parse("2027-06-15"));
        assertThat(REPORT.span().knownBefore()).isFalse();
    }

    @Test
    void aCleaningThatEndsAfterTheDepartureBreaksTheLeg() {
        TraceReport report = trace(agreed(later("K2", "2027-09-08T13:35:00Z", 15)), "2027-09-07T17:20:00Z");

        assertThat(errors(report)).contains("find-departure-missed");
        assertThat(leg(report, "K2").stands()).isFalse();
    }

    @Test
    void aRestThatBecomesTooShortIsFound() {
        TraceReport report = trace(agreed(later("K4", "2027-09-07T17:50:00Z", 15)), "2027-09-07T17:20:00Z");

        assertThat(errors(report)).contains("week-rest");
    }

    /** K4 cleaned on Tuesday without picking and used in the Ounder on Thursday: the find comes a day later. */
    @Test
    void aWaterThatASetWentOnToIsNamedWhereItsCleaningDoesNotCoverThePest() {
        Round round = agreed(task -> task.site().filter("OUN-02B"::equals).isPresent() ? withSet(task, "K4") : task);

        TraceReport report = trace(round, "2027-09-09T12:00:00Z");

        assertThat(errors(report)).contains("find-may-have-spread");
        assertThat(report.mayHaveSpread()).isTrue();
        assertThat(water(report, "OUN-U").clear()).isFalse();
        assertThat(report.notices()).extracting(TraceReport.Notice::whom).anySatisfy(whom -> assertThat(whom)
                .contains("P-OUN"));
    }

    @Test
    void aSetThatWasCleanedTooSoonIsToBeCleanedAgain() {
        TraceReport report = trace(ROUND, "2027-09-09T12:00:00Z");

        assertThat(report.exposed().stream().filter(kit -> kit.id().equals("K4")))
                .singleElement()
                .satisfies(kit -> assertThat(kit.now()).contains("does not cover LTW", "clean it by a row for LTW"));
        assertThat(report.legs()).isEmpty();
    }
}
