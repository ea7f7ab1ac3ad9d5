package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.CrewDay;

/** A vehicle is in service, certified on the day, and with one crew at a time. */
final class VehicleRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        List<CrewDay> days = facts.week().crewDays();
        for (CrewDay day : days) {
            Optional<StoreItem> vehicle = facts.round().store().items().stream()
                    .filter(item -> item.id().equals(day.vehicle()))
                    .findFirst();
            boolean fit = vehicle.filter(item -> item.state() != StoreState.OUT_OF_SERVICE
                            && item.certificates().stream()
                                    .noneMatch(one -> day.date().isAfter(one.validUntil())
                                            || one.validFrom()
                                                    .filter(day.date()::isBefore)
                                                    .isPresent()))
                    .isPresent();
            if (!fit) {
                problems.add(PlanFacts.broken(
                        "vehicle",
                        day,
                        day.vehicle() + " is missing, out of service or not certified",
                        "a vehicle that counts"));
            }
            for (CrewDay other : days) {
                boolean meets = other.start().isBefore(day.end()) && day.start().isBefore(other.end());
                if (!other.crew().equals(day.crew()) && other.vehicle().equals(day.vehicle()) && meets) {
                    problems.add(PlanFacts.broken(
                            "vehicle",
                            day,
                            day.vehicle() + " is with crew " + other.crew() + " too",
                            "one crew at a time"));
                }
            }
        }
        return problems;
    }
}
