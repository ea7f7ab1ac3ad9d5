package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.week.DeconTask;

/** A shared bath, bay or room can hold what is cleaned in any stretch of time. */
final class BathRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (DeconResource resource : facts.round().biosecurity().resources()) {
            for (DeconTask first : facts.week().decon()) {
                for (DeconTask last : facts.week().decon()) {
                    problems.addAll(check(facts, resource, first.start(), last.released()));
                }
            }
        }
        return problems.stream().distinct().toList();
    }

    private static List<Problem> check(PlanFacts facts, DeconResource resource, Instant from, Instant until) {
        int needed = facts.week().decon().stream()
                .filter(task -> !task.start().isBefore(from) && !task.released().isAfter(until))
                .flatMap(task -> task.steps().stream())
                .filter(step -> step.resource().filter(resource.id()::equals).isPresent())
                .mapToInt(DeconStep::minutes)
                .sum();
        int room = Math.max(1, resource.capacityKitSets()) * Math.max(0, PlanFacts.minutes(from, until));
        return until.isAfter(from) && needed > room
                ? List.of(PlanFacts.broken(
                        "bath",
                        resource.id(),
                        needed + " min are needed between " + facts.clock(from) + " and " + facts.clock(until),
                        room + " min"))
                : List.of();
    }
}
