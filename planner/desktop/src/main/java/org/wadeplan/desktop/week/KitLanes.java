package org.wadeplan.desktop.week;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** How each kit set stands along the week: in the water, uncleaned, treating, drying, free for any water. */
final class KitLanes {

    private static final long WEEKS_S = 30L * 24 * 3600;

    private final ZoneId zone;
    private final SortedMap<String, List<Stretch>> bySet = new TreeMap<>();

    KitLanes(WeekPlan week, ZoneId zone) {
        this.zone = zone;
        for (CrewDay day : week.crewDays()) {
            day.visits().forEach(visit -> visit.kitSets().forEach(set -> use(set, day, visit)));
        }
        week.decon().forEach(this::cleaning);
        bySet.replaceAll((set, stretches) -> withDirty(stretches));
    }

    private record Stretch(String id, BarKind kind, Instant from, Instant to, String label, Optional<String> site) {}

    private List<Stretch> stretches(String set) {
        return bySet.computeIfAbsent(set, absent -> new ArrayList<>());
    }

    private void use(String set, CrewDay day, Activity visit) {
        stretches(set)
                .add(new Stretch(
                        BarId.of(set, day, visit),
                        BarKind.USED,
                        visit.start(),
                        visit.end(),
                        visit.place(),
                        visit.site()));
    }

    private void cleaning(DeconTask task) {
        String id = BarId.of(task);
        List<Stretch> of = stretches(task.kitSet());
        of.add(new Stretch(
                id, BarKind.TREATING, task.start(), task.crewFree(), word(BarKind.TREATING), Optional.empty()));
        if (task.released().isAfter(task.crewFree())) {
            of.add(new Stretch(
                    id, BarKind.DRYING, task.crewFree(), task.released(), word(BarKind.DRYING), Optional.empty()));
        }
        of.add(new Stretch(
                id, BarKind.RELEASED, task.released(), task.released().plusSeconds(600), "", Optional.empty()));
    }

    private static String word(BarKind kind) {
        return kind.words();
    }

    /** Between a use and what follows it the set is uncleaned; after the last it stays so. */
    private static List<Stretch> withDirty(List<Stretch> stretches) {
        List<Stretch> sorted = stretches.stream()
                .sorted(Comparator.comparing(Stretch::from).thenComparing(Stretch::kind))
                .toList();
        List<Stretch> all = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            Stretch now = sorted.get(i);
            all.add(now);
            boolean last = i + 1 == sorted.size();
            Instant until =
                    last ? now.to().plusSeconds(WEEKS_S) : sorted.get(i + 1).from();
            if (now.kind() == BarKind.USED && until.isAfter(now.to())) {
                all.add(new Stretch(now.id(), BarKind.DIRTY, now.to(), until, word(BarKind.DIRTY), now.site()));
            }
        }
        return all;
    }

    /** The lanes of one day: only sets that are not simply clean on it. */
    List<Lane> of(LocalDate date, int fromMin, int toMin) {
        DayClock clock = new DayClock(date, zone);
        List<Lane> lanes = new ArrayList<>();
        bySet.forEach((set, stretches) -> {
            List<WeekBar> bars = new ArrayList<>();
            for (Stretch stretch : stretches) {
                int from = Math.max(fromMin, clock.minutes(stretch.from()));
                int to = Math.min(toMin, clock.minutes(stretch.to()));
                if (from < to) {
                    bars.add(bar(set, stretch, date, from, to));
                }
            }
            if (!bars.isEmpty()) {
                lanes.add(new Lane(Words.of("week.kitLane", set), true, List.copyOf(bars)));
            }
        });
        return lanes;
    }

    private WeekBar bar(String set, Stretch stretch, LocalDate date, int from, int to) {
        String spoken = stretch.kind() == BarKind.RELEASED
                ? Words.of("week.releasedSpoken", set, Times.dayClock(stretch.from(), zone))
                : Words.of(
                        "week.kitSpoken",
                        set,
                        stretch.kind().words(),
                        stretch.site().orElse(""),
                        Times.dayClock(stretch.from(), zone),
                        Times.dayClock(stretch.to(), zone));
        return new WeekBar(
                BarId.stretch(stretch.id(), date, stretch.kind()),
                stretch.kind(),
                from,
                to,
                OptionalInt.empty(),
                OptionalInt.empty(),
                stretch.label(),
                spoken,
                stretch.site());
    }
}
