package org.wadeplan.planner.decon.schedule;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.round.DeconResource;

/**
 * Puts cleanings on the bench in the order in which they are to start, and by kit set where two start together. At every
 * stage a place is kept for each earlier set that has not left it yet: nobody overtakes. That may leave a tub idle for a
 * while, and in return one more tub, or one cleaning fewer, never makes any release later.
 *
 * <p>One person stands by each set until it hangs; a crew cannot look after more sets at a time than it has people.
 */
final class BenchScheduler {

    private static final Comparator<BenchRequest> ORDER =
            Comparator.comparing(BenchRequest::start).thenComparing(BenchRequest::kitSet);
    private static final int PEOPLE_PER_SET = 1;

    private final Map<String, DeconResource> resources = new LinkedHashMap<>();
    private final Map<String, Turns> places = new LinkedHashMap<>();
    private final Map<String, Turns> people = new LinkedHashMap<>();

    private BenchScheduler(List<DeconResource> all) {
        for (DeconResource resource : all) {
            resources.put(resource.id(), resource);
        }
    }

    /** Each cleaning by the clock, in the order of service, with numbered places. */
    static List<BenchTask> schedule(List<BenchRequest> requests, List<DeconResource> resources) {
        BenchScheduler scheduler = new BenchScheduler(resources);
        List<BenchTask> tasks =
                requests.stream().sorted(ORDER).map(scheduler::place).toList();
        return PlaceNumbers.numbered(tasks);
    }

    private BenchTask place(BenchRequest request) {
        Turns crew = people.computeIfAbsent(request.crew() + " " + request.day(), key -> new Turns(request.crewSize()));
        Instant begun = crew.next(request.start());
        List<BenchStep> steps = steps(request, begun);
        Instant crewFree = steps.stream()
                .filter(BenchStep::crewBusy)
                .map(BenchStep::end)
                .max(Comparator.naturalOrder())
                .orElse(begun);
        crew.take(crewFree);
        Instant released = steps.isEmpty() ? begun : steps.get(steps.size() - 1).end();
        return new BenchTask(
                request.kitSet(),
                request.crew(),
                request.day(),
                request.fromWaters(),
                request.start(),
                PEOPLE_PER_SET,
                minutes(request.start(), begun),
                steps,
                crewFree,
                released);
    }

    private List<BenchStep> steps(BenchRequest request, Instant begun) {
        List<BenchStep> placed = new ArrayList<>();
        Instant at = begun;
        for (List<DeconStep> stay : stays(request.steps())) {
            Optional<DeconResource> where = resource(stay.get(0));
            Instant start = at;
            if (where.isPresent()) {
                DeconResource place = where.get();
                Turns turns = places.computeIfAbsent(place.id(), id -> new Turns(place.capacityKitSets()));
                start = turns.next(at);
                turns.take(start.plus(length(stay)));
            }
            int waitedMin = minutes(at, start);
            at = start;
            for (DeconStep step : stay) {
                Instant end = at.plus(Duration.ofMinutes(step.minutes()));
                placed.add(step(step, at, end, where, waitedMin));
                waitedMin = 0;
                at = end;
            }
        }
        return List.copyOf(placed);
    }

    private static BenchStep step(
            DeconStep step, Instant start, Instant end, Optional<DeconResource> where, int waitedMin) {
        return new BenchStep(
                step.step(),
                step.label(),
                start,
                end,
                step.crewBusy(),
                where.map(one -> new BenchPlace(one.id(), one.label(), 1, Math.max(1, one.capacityKitSets()))),
                step.target(),
                waitedMin);
    }

    /** Steps that follow each other in one place are one stay: a set that hangs there is not moved to dry there. */
    private List<List<DeconStep>> stays(List<DeconStep> steps) {
        List<List<DeconStep>> stays = new ArrayList<>();
        for (DeconStep step : steps) {
            Optional<DeconResource> where = resource(step);
            boolean goesOn = !stays.isEmpty()
                    && where.isPresent()
                    && resource(stays.get(stays.size() - 1).get(0)).equals(where);
            if (!goesOn) {
                stays.add(new ArrayList<>());
            }
            stays.get(stays.size() - 1).add(step);
        }
        return stays;
    }

    private Optional<DeconResource> resource(DeconStep step) {
        return step.resource().flatMap(id -> Optional.ofNullable(resources.get(id)));
    }

    private static Duration length(List<DeconStep> stay) {
        return Duration.ofMinutes(stay.stream().mapToInt(DeconStep::minutes).sum());
    }

    private static int minutes(Instant from, Instant until) {
        return Math.toIntExact(Duration.between(from, until).toMinutes());
    }
}
