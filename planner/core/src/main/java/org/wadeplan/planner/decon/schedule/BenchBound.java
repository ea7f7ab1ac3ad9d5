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

/**
 * What a shared place was used for on a day, beside the least that any order of the same cleanings could take: all minutes of
 * use over the number of places, rounded up, and never less than the longest stay.
 *
 * @param useMin minutes of use, all sets together
 * @param atLeastMin no order is done sooner after the first set is in
 * @param takenMin from the first set in to the last one out
 */
public record BenchBound(
        LocalDate day, String resource, String label, int places, int useMin, int atLeastMin, int takenMin) {

    private record Stay(Instant start, Instant end) {

        int minutes() {
            return Math.toIntExact(Duration.between(start, end).toMinutes());
        }
    }

    private record Key(LocalDate day, String resource, String label, int places) {}

    /** By day, then resource in order of first use. */
    static List<BenchBound> of(List<BenchTask> tasks) {
        Map<Key, List<Stay>> stays = new LinkedHashMap<>();
        for (BenchTask task : tasks) {
            Optional<BenchPlace> last = Optional.empty();
            for (BenchStep step : task.steps()) {
                Optional<BenchPlace> place = step.place();
                if (place.isPresent()) {
                    add(stays, key(task, place.get()), step, place.equals(last));
                }
                last = place;
            }
        }
        List<BenchBound> bounds = new ArrayList<>();
        stays.forEach((key, all) -> bounds.add(bound(key, all)));
        bounds.sort(Comparator.comparing(BenchBound::day));
        return List.copyOf(bounds);
    }

    private static Key key(BenchTask task, BenchPlace place) {
        return new Key(task.day(), place.resource(), place.label(), place.of());
    }

    private static void add(Map<Key, List<Stay>> stays, Key key, BenchStep step, boolean goesOn) {
        List<Stay> all = stays.computeIfAbsent(key, none -> new ArrayList<>());
        if (goesOn) {
            Stay begun = all.remove(all.size() - 1);
            all.add(new Stay(begun.start(), step.end()));
        } else {
            all.add(new Stay(step.start(), step.end()));
        }
    }

    private static BenchBound bound(Key key, List<Stay> stays) {
        int useMin = stays.stream().mapToInt(Stay::minutes).sum();
        int longestMin = stays.stream().mapToInt(Stay::minutes).max().orElse(0);
        int sharedMin = (useMin + key.places() - 1) / key.places();
        Instant first =
                stays.stream().map(Stay::start).min(Comparator.naturalOrder()).orElseThrow();
        Instant last =
                stays.stream().map(Stay::end).max(Comparator.naturalOrder()).orElseThrow();
        return new BenchBound(
                key.day(),
                key.resource(),
                key.label(),
                key.places(),
                useMin,
                Math.max(sharedMin, longestMin),
                Math.toIntExact(Duration.between(first, last).toMinutes()));
    }
}
