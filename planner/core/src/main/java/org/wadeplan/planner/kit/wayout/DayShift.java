package org.wadeplan.planner.kit.wayout;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;

/** Agreed lines with a crew's day moved. */
final class DayShift {

    private DayShift() {}

    /** All lines of the crew-day later by so much. */
    static List<AgreedTask> later(List<AgreedTask> tasks, CrewDay day, Duration by) {
        return mapped(
                tasks,
                of(day),
                task -> at(task, task.date(), task.crew(), task.start().plus(by)));
    }

    /**
     * The same, with cleanings of kit sets that the crew-day does not use put behind the last line of the crew's next day;
     * empty where it has no such cleanings or no next day.
     */
    static Optional<List<AgreedTask>> laterWithoutOthers(
            List<AgreedTask> tasks, CrewDay day, Duration by, Optional<CrewDay> next) {
        return behind(tasks, day, next).map(moved -> later(moved, day, by));
    }

    /** Cleanings of kit sets that the crew-day does not use, put behind the last line of the crew's next day. */
    static Optional<List<AgreedTask>> behind(List<AgreedTask> tasks, CrewDay day, Optional<CrewDay> next) {
        Predicate<AgreedTask> others = others(day);
        if (next.isEmpty() || tasks.stream().noneMatch(others)) {
            return Optional.empty();
        }
        Instant free = cleaned(next.get());
        return Optional.of(mapped(
                tasks, others, task -> at(task, next.get().date(), next.get().crew(), free)));
    }

    /** Cleanings of kit sets that no visit of the crew-day uses. */
    static Predicate<AgreedTask> others(CrewDay day) {
        TreeSet<String> used = new TreeSet<>();
        day.visits().forEach(visit -> used.addAll(visit.kitSets()));
        return of(day).and(task -> task.cleaning() && task.kitSets().stream().noneMatch(used::contains));
    }

    /** When the crew-day's last cleaning is done, or its last drive where it cleans nothing. */
    static Instant cleaned(CrewDay day) {
        return day.activities().stream()
                .filter(activity -> activity.kind() == ActivityKind.DECON)
                .map(activity -> activity.end())
                .max(Comparator.naturalOrder())
                .orElseGet(day::end);
    }

    /** The lines that a predicate names, on another crew-day at the same time of day. */
    static List<AgreedTask> onDay(
            List<AgreedTask> tasks, Predicate<AgreedTask> moving, LocalDate date, String crew, Duration by) {
        return mapped(tasks, moving, task -> at(task, date, crew, task.start().plus(by)));
    }

    static Predicate<AgreedTask> of(CrewDay day) {
        return task -> task.crew().equals(day.crew()) && task.date().equals(day.date());
    }

    private static List<AgreedTask> mapped(
            List<AgreedTask> tasks, Predicate<AgreedTask> which, UnaryOperator<AgreedTask> change) {
        return tasks.stream()
                .map(task -> which.test(task) ? change.apply(task) : task)
                .toList();
    }

    private static AgreedTask at(AgreedTask task, LocalDate date, String crew, Instant start) {
        return new AgreedTask(date, crew, start, task.site(), task.part(), task.kitSets(), task.note());
    }
}
