package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
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
                boolean meets = out(other).isBefore(back(day)) && out(day).isBefore(back(other));
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

    /** Its crew has the vehicle from loading for the first drive until it is back from the last. */
    private static Instant out(CrewDay day) {
        Instant first = drives(day).findFirst().map(Activity::start).orElseGet(day::start);
        return day.activities().stream()
                .filter(one -> one.kind() == ActivityKind.LOAD && !one.end().isAfter(first))
                .map(Activity::start)
                .min(Instant::compareTo)
                .orElse(first);
    }

    private static Instant back(CrewDay day) {
        return drives(day).map(Activity::end).max(Instant::compareTo).orElseGet(day::end);
    }

    private static Stream<Activity> drives(CrewDay day) {
        return day.activities().stream().filter(one -> one.kind() == ActivityKind.TRAVEL);
    }
}
