package org.wadeplan.planner.decon.schedule;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Gives each stay the lowest number of its place that is free when it begins, so that a tub whose bath is made up is used
 * again before the next one is filled.
 */
final class PlaceNumbers {

    private final Map<String, List<Instant>> freeAt = new LinkedHashMap<>();
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    private PlaceNumbers() {}

    /** One stay: the first and last step of a task in one place. */
    private record Stay(int task, int first, int last, String resource, Instant start, Instant end) {}

    static List<BenchTask> numbered(List<BenchTask> tasks) {
        List<Stay> stays = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            stays.addAll(staysOf(i, tasks.get(i).steps()));
        }
        stays.sort(Comparator.comparing(Stay::start).thenComparing(Stay::task));
        PlaceNumbers numbers = new PlaceNumbers();
        stays.forEach(numbers::give);
        List<BenchTask> done = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            done.add(numbers.with(i, tasks.get(i)));
        }
        return List.copyOf(done);
    }

    private static List<Stay> staysOf(int task, List<BenchStep> steps) {
        List<Stay> stays = new ArrayList<>();
        int first = 0;
        while (first < steps.size()) {
            Optional<String> where = steps.get(first).place().map(BenchPlace::resource);
            int last = first;
            while (where.isPresent()
                    && last + 1 < steps.size()
                    && steps.get(last + 1).place().map(BenchPlace::resource).equals(where)) {
                last++;
            }
            if (where.isPresent()) {
                stays.add(new Stay(
                        task,
                        first,
                        last,
                        where.get(),
                        steps.get(first).start(),
                        steps.get(last).end()));
            }
            first = last + 1;
        }
        return stays;
    }

    private void give(Stay stay) {
        List<Instant> free = freeAt.computeIfAbsent(stay.resource(), key -> new ArrayList<>());
        int number = 0;
        while (number < free.size() && free.get(number).isAfter(stay.start())) {
            number++;
        }
        if (number == free.size()) {
            free.add(stay.end());
        } else {
            free.set(number, stay.end());
        }
        for (int step = stay.first(); step <= stay.last(); step++) {
            numbers.put(stay.task() + " " + step, number + 1);
        }
    }

    private BenchTask with(int index, BenchTask task) {
        List<BenchStep> steps = new ArrayList<>();
        for (int i = 0; i < task.steps().size(); i++) {
            BenchStep step = task.steps().get(i);
            int number = numbers.getOrDefault(index + " " + i, 1);
            Optional<BenchPlace> place =
                    step.place().map(where -> new BenchPlace(where.resource(), where.label(), number, where.of()));
            steps.add(new BenchStep(
                    step.step(),
                    step.label(),
                    step.start(),
                    step.end(),
                    step.crewBusy(),
                    place,
                    step.target(),
                    step.waitedMin()));
        }
        return new BenchTask(
                task.kitSet(),
                task.crew(),
                task.day(),
                task.fromWaters(),
                task.asked(),
                task.people(),
                task.waitedForPeopleMin(),
                List.copyOf(steps),
                task.crewFree(),
                task.released());
    }
}
