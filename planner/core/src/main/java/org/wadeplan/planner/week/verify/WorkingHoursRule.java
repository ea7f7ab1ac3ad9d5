package org.wadeplan.planner.week.verify;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.DutyRules;
import org.wadeplan.planner.week.CrewDay;

/** A crew-day is no longer than a shift and lies between its earliest start and latest end. */
final class WorkingHoursRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        DutyRules duty = facts.round().header().duty();
        for (CrewDay day : facts.week().crewDays()) {
            int shift = PlanFacts.minutes(day.start(), day.end());
            if (shift > duty.maxShiftMin()) {
                problems.add(PlanFacts.broken(
                        "hours", day, shift + " min from first to last", "at most " + duty.maxShiftMin()));
            }
            Optional<CrewDayRoster> roster = RosterRule.line(facts, day);
            LocalTime earliest = roster.flatMap(CrewDayRoster::earliestStart)
                    .filter(duty.earliestStart()::isBefore)
                    .orElse(duty.earliestStart());
            if (day.start().isBefore(facts.at(day.date(), earliest))) {
                problems.add(PlanFacts.broken(
                        "hours", day, "starts at " + facts.clock(day.start()), "not before " + earliest));
            }
            roster.flatMap(CrewDayRoster::latestEnd).ifPresent(latest -> {
                LocalDate date =
                        latest.isAfter(earliest) ? day.date() : day.date().plusDays(1);
                if (day.end().isAfter(facts.at(date, latest))) {
                    problems.add(PlanFacts.broken("hours", day, "ends at " + facts.clock(day.end()), "by " + latest));
                }
            });
        }
        return problems;
    }
}
