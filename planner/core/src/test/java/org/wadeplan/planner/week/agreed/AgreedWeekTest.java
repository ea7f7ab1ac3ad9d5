package org.wadeplan.planner.week.agreed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** What was agreed stands where it was agreed; what cannot be is named and never moved. */
class AgreedWeekTest {

    private static final LocalDate MONDAY = LocalDate.parse("2027-09-06");

    private static AgreedTask at(AgreedTask task, Instant start) {
        return new AgreedTask(task.date(), task.crew(), start, task.site(), task.part(), task.kitSets(), task.note());
    }

    private static AgreedTask cleaning(String crew, String start, String kitSet) {
        Instant time = Instant.parse(start);
        return new AgreedTask(
                LocalDate.parse(start.substring(0, 10)),
                crew,
                time,
                Optional.empty(),
                Optional.empty(),
                List.of(kitSet),
                Optional.empty());
    }

    private static List<AgreedTask> moved(List<AgreedTask> tasks, String site, VisitPart part, int minutes) {
        return tasks.stream()
                .map(task ->
                        task.site().equals(Optional.of(site)) && task.part().equals(Optional.of(part))
                                ? at(task, task.start().plus(Duration.ofMinutes(minutes)))
                                : task)
                .toList();
    }

    private static List<AgreedTask> with(List<AgreedTask> tasks, AgreedTask more) {
        List<AgreedTask> all = new ArrayList<>(tasks);
        all.add(more);
        return all;
    }

    private static List<String> codes(AgreedWeek.Laid laid) {
        return laid.findings().stream().map(Problem::code).toList();
    }

    @Test
    void everyAgreedVisitStandsAtItsAgreedStart() {
        List<String> agreed = AgreedDemoWeek.ROUND.log().agreed().stream()
                .filter(task -> !task.cleaning())
                .map(task -> task.site().orElse("") + " " + task.start() + " " + task.kitSets())
                .sorted()
                .toList();

        assertThat(AgreedDemoWeek.laid().week().crewDays().stream()
                        .flatMap(day -> day.visits().stream())
                        .map(visit -> visit.site().orElse("") + " " + visit.start() + " " + visit.kitSets())
                        .sorted())
                .isEqualTo(agreed);
    }

    @Test
    void activitiesFollowEachOtherWithoutGap() {
        for (CrewDay day : AgreedDemoWeek.laid().week().crewDays()) {
            Instant clock = day.start();
            for (Activity activity : day.activities()) {
                assertThat(activity.start()).isEqualTo(clock);
                clock = activity.end();
            }
        }
    }

    @Test
    void twoSetsCleanedAtOnceKeepTheCrewOnce() {
        WeekPlan week = AgreedDemoWeek.laid().week();
        CrewDay tuesday = week.crewDay("A", MONDAY.plusDays(1)).orElseThrow();

        assertThat(tuesday.activities().stream().filter(one -> one.kind() == ActivityKind.DECON))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.kitSets()).containsExactly("K1", "T1");
                    assertThat(one.minutes()).isEqualTo(60);
                });
        assertThat(week.decon().stream().filter(task -> task.start().equals(Instant.parse("2027-09-07T16:05:00Z"))))
                .extracting(DeconTask::kitSet)
                .containsExactly("K1", "T1");
    }

    @Test
    void aCleaningCountsEveryWaterSinceTheLastOne() {
        AgreedWeek.Laid laid = AgreedDemoWeek.laid(tasks -> tasks.stream()
                .filter(task -> !(task.cleaning()
                        && task.kitSets().equals(List.of("K1"))
                        && task.start().isBefore(Instant.parse("2027-09-08T00:00:00Z"))))
                .toList());

        assertThat(laid.week().decon().stream().filter(task -> task.kitSet().equals("K1")))
                .first()
                .satisfies(task -> assertThat(task.fromWaters()).containsExactly("BRN", "OUN-U"));
    }

    @Test
    void whatCannotBeReachedInTimeIsNamedAndStays() {
        AgreedWeek.Laid laid = AgreedDemoWeek.laid(tasks -> moved(tasks, "BRN-03", VisitPart.SET, -60));

        assertThat(laid.findings().stream()
                        .filter(found -> found.code().equals("agreed-too-soon") && found.severity() == Severity.ERROR))
                .singleElement()
                .satisfies(found -> assertThat(found.sentence())
                        .contains(
                                "BRN-03 set",
                                "starts at 2027-09-06 12:55",
                                "free at BRN-01 at 2027-09-06 13:30",
                                "10 min to drive"));
        assertThat(laid.week().crewDay("A", MONDAY).orElseThrow().visits())
                .extracting(Activity::start)
                .contains(Instant.parse("2027-09-06T12:55:00Z"));
    }

    @Test
    void aRinseThatHasNoRoomIsCutShortAndNamed() {
        AgreedWeek.Laid laid = AgreedDemoWeek.laid(tasks -> moved(tasks, "BRN-03", VisitPart.SET, -5));

        assertThat(laid.findings()).anySatisfy(found -> assertThat(found.sentence())
                .contains("10 min are left to check and rinse K1 after BRN-01 survey"));
        assertThat(laid.week().crewDay("A", MONDAY).orElseThrow().activities().stream()
                        .filter(one -> one.kind() == ActivityKind.RINSE))
                .singleElement()
                .satisfies(one -> assertThat(one.minutes()).isEqualTo(10));
    }

    @Test
    void aCleaningOfWhatTouchedNothingIsNamed() {
        AgreedWeek.Laid laid = AgreedDemoWeek.laid(tasks -> with(tasks, cleaning("A", "2027-09-06T07:00:00Z", "K2")));

        assertThat(codes(laid)).contains("agreed-cleaning-of-clean");
    }

    @Test
    void aPartThatTheMethodLacksIsNamedAndLeftOut() {
        AgreedTask lift = new AgreedTask(
                MONDAY,
                "A",
                Instant.parse("2027-09-06T18:00:00Z"),
                Optional.of("BRN-01"),
                Optional.of(VisitPart.LIFT),
                List.of("K1"),
                Optional.empty());

        AgreedWeek.Laid laid = AgreedDemoWeek.laid(tasks -> with(tasks, lift));

        assertThat(codes(laid)).contains("agreed-without-minutes");
        assertThat(laid.week().crewDay("A", MONDAY).orElseThrow().visits()).hasSize(2);
    }

    @Test
    void aCrewWithoutRosterAndALineOfAnotherDayAreNamed() {
        AgreedTask stray = at(cleaning("Z", "2027-09-06T17:00:00Z", "K1"), Instant.parse("2027-09-09T15:00:00Z"));

        AgreedWeek.Laid laid = AgreedDemoWeek.laid(tasks -> with(tasks, stray));

        assertThat(codes(laid)).contains("agreed-without-roster", "agreed-on-another-day");
    }

    @Test
    void aSiteThatAReserveStandsInForIsExplained() {
        assertThat(AgreedDemoWeek.laid().week().unplaced()).singleElement().satisfies(one -> assertThat(one.reasons())
                .containsExactly("The agreed week visits OUN-02B in its place."));
    }
}
