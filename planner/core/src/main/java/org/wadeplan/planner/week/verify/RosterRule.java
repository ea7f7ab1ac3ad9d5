package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.week.CrewDay;

/** A crew-day has the people and the vehicle of the roster. */
final class RosterRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (CrewDay day : facts.week().crewDays()) {
            Optional<CrewDayRoster> line = line(facts, day);
            boolean same = line.filter(one -> one.vehicle().equals(day.vehicle())
                            && new HashSet<>(one.people()).equals(new HashSet<>(day.people()))
                            && one.people().size() == day.people().size())
                    .isPresent();
            if (!same || facts.people(day).size() != day.people().size()) {
                problems.add(PlanFacts.broken(
                        "roster", day, day.people() + " with " + day.vehicle(), "the roster's people and vehicle"));
            }
        }
        return problems;
    }

    static Optional<CrewDayRoster> line(PlanFacts facts, CrewDay day) {
        return facts.round().roster().stream()
                .filter(one -> one.date().equals(day.date()) && one.crew().equals(day.crew()))
                .findFirst();
    }
}
