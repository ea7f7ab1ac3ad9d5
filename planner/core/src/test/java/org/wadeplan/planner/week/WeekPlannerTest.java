package org.wadeplan.planner.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.Round;

class WeekPlannerTest {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("dd HH:mm", Locale.ROOT);

    @Test
    void theResolvedDemoWeekHoldsEveryVisitFromMondayToFriday() {
        Round round = IlvermoorWeek.resolved();
        long t0 = System.nanoTime();
        WeekPlan plan = WeekPlanner.plan(IlvermoorWeek.inputs(round), 200, Progress.NONE);
        System.out.println("ms " + (System.nanoTime() - t0) / 1000000);
        System.out.println(words(plan, round.header().zone()));
        assertThat(plan.unplaced()).extracting(Unplaced::site).containsExactly("OUN-02");
    }

    static String words(WeekPlan plan, ZoneId zone) {
        StringBuilder words = new StringBuilder();
        for (CrewDay day : plan.crewDays()) {
            words.append(day.crew()).append(' ').append(day.date()).append('\n');
            for (Activity one : day.activities()) {
                words.append("   ")
                        .append(CLOCK.format(one.start().atZone(zone)))
                        .append('-')
                        .append(CLOCK.format(one.end().atZone(zone)))
                        .append(' ')
                        .append(one.kind())
                        .append(' ')
                        .append(one.place())
                        .append(' ')
                        .append(one.part())
                        .append(one.kitSets())
                        .append('\n');
            }
        }
        plan.unplaced().forEach(one -> words.append(one).append('\n'));
        plan.score().forEach(one -> words.append(one).append('\n'));
        return words.toString();
    }
}
