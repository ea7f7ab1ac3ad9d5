package org.wadeplan.planner.week;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The schedule.
 *
 * @param crewDays by date, then crew; only days with work
 * @param decon every cleaning, by start
 * @param placements why each part stands where it does
 * @param unplaced sites of the list that are not visited
 * @param estimatedLegs drives that were not in the travel table, in words
 * @param score levels of the plan from most to least important, in words with their numbers
 */
public record WeekPlan(
        List<CrewDay> crewDays,
        List<DeconTask> decon,
        List<Placement> placements,
        List<Unplaced> unplaced,
        List<String> estimatedLegs,
        List<String> score) {

    public Optional<CrewDay> crewDay(String crew, LocalDate date) {
        return crewDays.stream()
                .filter(day -> day.crew().equals(crew) && day.date().equals(date))
                .findFirst();
    }
}
