package org.wadeplan.planner.decon.schedule;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.round.DeconResource;

/** Small benches made at random, and the plain minute by minute way of serving them. */
final class Benches {

    static final Instant MORNING = Instant.parse("2027-09-07T06:00:00Z");
    static final LocalDate DAY = LocalDate.of(2027, 9, 7);

    private Benches() {}

    /** Places and cleanings. */
    record Bench(List<DeconResource> places, List<BenchRequest> requests) {

        Bench withOneMore(int which) {
            List<DeconResource> more = new ArrayList<>(places);
            DeconResource one = places.get(which % places.size());
            more.set(which % places.size(), place(one.id(), one.capacityKitSets() + 1));
            return new Bench(List.copyOf(more), requests);
        }

        Bench without(int which) {
            List<BenchRequest> fewer = new ArrayList<>(requests);
            fewer.remove(which % requests.size());
            return new Bench(places, List.copyOf(fewer));
        }
    }

    static DeconResource place(String id, int room) {
        return new DeconResource(
                id, id, room, Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
    }

    static DeconStep step(String name, int minutes, String place) {
        boolean alone = name.equals("dry");
        return new DeconStep(
                name, name, minutes, !alone, place.isEmpty() ? Optional.empty() : Optional.of(place), Optional.empty());
    }

    static Arbitrary<Bench> benches() {
        Arbitrary<Integer> rooms = Arbitraries.integers().between(1, 3);
        Arbitrary<List<DeconResource>> places = Combinators.combine(rooms, rooms, rooms)
                .as((tubs, bays, hooks) -> List.of(place("tub", tubs), place("bay", bays), place("room", hooks)));
        Arbitrary<Map<String, Integer>> crews =
                Combinators.combine(rooms, rooms).as((a, b) -> Map.of("A", a, "B", b));
        return Combinators.combine(places, crews, drafts().list().ofMinSize(1).ofMaxSize(6))
                .as((all, sizes, drafts) -> new Bench(all, requests(drafts, sizes)));
    }

    private record Draft(int start, String crew, List<DeconStep> steps, int dryMin) {}

    private static Arbitrary<Draft> drafts() {
        Arbitrary<DeconStep> steps = Combinators.combine(
                        Arbitraries.integers().between(0, 30), Arbitraries.of("", "tub", "bay", "room"))
                .as((minutes, place) -> step("soak", minutes, place));
        return Combinators.combine(
                        Arbitraries.integers().between(0, 60),
                        Arbitraries.of("A", "B"),
                        steps.list().ofMinSize(1).ofMaxSize(4),
                        Arbitraries.integers().between(0, 90))
                .as(Draft::new);
    }

    private static List<BenchRequest> requests(List<Draft> drafts, Map<String, Integer> sizes) {
        List<BenchRequest> requests = new ArrayList<>();
        for (Draft draft : drafts) {
            List<DeconStep> steps = new ArrayList<>(draft.steps());
            steps.add(step("dry", draft.dryMin(), "room"));
            Instant start = MORNING.plus(Duration.ofMinutes(draft.start()));
            requests.add(new BenchRequest(
                    "K" + requests.size(),
                    draft.crew(),
                    DAY,
                    sizes.getOrDefault(draft.crew(), 1),
                    List.of("W"),
                    start,
                    start,
                    steps));
        }
        return List.copyOf(requests);
    }

    static Map<String, Instant> releases(Bench bench) {
        Map<String, Instant> releases = new LinkedHashMap<>();
        BenchScheduler.schedule(bench.requests(), bench.places())
                .forEach(task -> releases.put(task.kitSet(), task.released()));
        return releases;
    }

    /**
     * The same rule, played minute by minute: a set goes on when its step is over and, in its next place or crew, fewer
     * earlier sets are left to come through than there is room for.
     */
    static Map<String, Instant> playedByTheMinute(Bench bench) {
        List<BenchRequest> order = bench.requests().stream()
                .sorted(Comparator.comparing(BenchRequest::start).thenComparing(BenchRequest::kitSet))
                .toList();
        List<MinuteSet> sets = new ArrayList<>();
        order.forEach(request -> sets.add(new MinuteSet(request)));
        Instant now = MORNING;
        while (sets.stream().anyMatch(set -> !set.done())) {
            for (int i = 0; i < sets.size(); i++) {
                sets.get(i).play(now, sets.subList(0, i), bench.places());
            }
            now = now.plus(Duration.ofMinutes(1));
        }
        Map<String, Instant> releases = new LinkedHashMap<>();
        sets.forEach(set -> releases.put(set.request.kitSet(), set.endOfStep));
        return releases;
    }
}
