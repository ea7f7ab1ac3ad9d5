package org.wadeplan.planner.week.agreed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** Day lengths and ends of cleanings of the demo's agreed week against the invented scenario's reference plan. */
class AgreedWeekReferenceTest {

    private static final WeekPlan WEEK = AgreedDemoWeek.laid().week();

    private static List<ReferenceTable.Row> rows(String what) {
        return ReferenceTable.read("agreed-week.csv").stream()
                .filter(row -> row.text("what").equals(what))
                .toList();
    }

    static List<ReferenceTable.Row> days() {
        return rows("day-h");
    }

    static List<ReferenceTable.Row> cleanings() {
        return rows("clean-end");
    }

    /** The scenario loads for 30 minutes on some days and leaves unloading out; the round says 15 minutes for each. */
    @ParameterizedTest
    @MethodSource("days")
    void aDayIsAsLongAsInTheReferencePlanButForLoading(ReferenceTable.Row row) {
        CrewDay day = WEEK.crewDay(row.text("crew"), LocalDate.parse(row.text("date")))
                .orElseThrow();

        assertThat(Duration.between(day.start(), day.end()).toMinutes() / 60.0)
                .isCloseTo(row.number("expected"), within(row.number("tolerance")));
    }

    @ParameterizedTest
    @MethodSource("cleanings")
    void aCleaningEndsAsInTheReferencePlan(ReferenceTable.Row row) {
        List<String> ends = WEEK.decon().stream()
                .filter(task -> task.kitSet().equals(row.text("kit_set"))
                        && task.crew().equals(row.text("crew"))
                        && local(task).toLocalDate().toString().equals(row.text("date")))
                .map(task -> local(task).toLocalTime().toString())
                .toList();

        assertThat(ends).containsExactly(row.text("expected"));
    }

    private static java.time.LocalDateTime local(DeconTask task) {
        return task.crewFree().atZone(AgreedDemoWeek.ROUND.header().zone()).toLocalDateTime();
    }
}
