package org.wadeplan.planner.decon.trace;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/**
 * The week with some cleanings longer. Waiting and loading after a cleaning take up the minutes first; what they cannot take
 * up moves everything after it that day, so that a visit that starts late is seen to.
 */
final class WeekShift {

    private final List<ChangedCleaning> changes;
    private final Map<DeconTask, DeconTask> moved = new LinkedHashMap<>();

    private WeekShift(List<ChangedCleaning> changes) {
        this.changes = changes;
    }

    static WeekPlan of(WeekPlan week, List<ChangedCleaning> changes) {
        WeekShift shift = new WeekShift(changes);
        List<CrewDay> days = new ArrayList<>();
        for (CrewDay day : week.crewDays()) {
            days.add(new CrewDay(day.crew(), day.date(), day.people(), day.vehicle(), shift.activities(week, day)));
        }
        List<DeconTask> decon = week.decon().stream()
                .map(task -> shift.moved.getOrDefault(task, shift.change(task).orElse(task)))
                .sorted(Comparator.comparing(DeconTask::start).thenComparing(DeconTask::kitSet))
                .toList();
        return new WeekPlan(
                List.copyOf(days), decon, week.placements(), week.unplaced(), week.estimatedLegs(), week.score());
    }

    private List<Activity> activities(WeekPlan week, CrewDay day) {
        List<Activity> all = new ArrayList<>();
        Duration late = Duration.ZERO;
        boolean cleaned = false;
        for (Activity activity : day.activities()) {
            Duration length = Duration.between(activity.start(), activity.end());
            Instant start = activity.start().plus(late);
            if (activity.kind() == ActivityKind.DECON) {
                Duration longer = cleanings(week, day, activity, late);
                length = length.plus(longer);
                late = late.plus(longer);
                cleaned = true;
            } else if (activity.kind() == ActivityKind.WAIT || (cleaned && activity.kind() == ActivityKind.LOAD)) {
                Duration taken = late.compareTo(length) < 0 ? late : length;
                length = length.minus(taken);
                late = late.minus(taken);
            }
            if (!length.isZero()) {
                all.add(moved(activity, start, start.plus(length)));
            }
        }
        return List.copyOf(all);
    }

    /** Moves the cleanings of an activity, and gives how much longer it takes. */
    private Duration cleanings(WeekPlan week, CrewDay day, Activity activity, Duration late) {
        Instant free = activity.end().plus(late);
        for (DeconTask task : week.decon()) {
            boolean inIt = task.crew().equals(day.crew())
                    && activity.kitSets().contains(task.kitSet())
                    && !task.start().isBefore(activity.start())
                    && !task.crewFree().isAfter(activity.end());
            if (inIt) {
                DeconTask again = moved(change(task).orElse(task), late);
                moved.put(task, again);
                free = again.crewFree().isAfter(free) ? again.crewFree() : free;
            }
        }
        return Duration.between(activity.end().plus(late), free);
    }

    private Optional<DeconTask> change(DeconTask task) {
        return changes.stream()
                .filter(one -> one.before().equals(task))
                .map(ChangedCleaning::after)
                .findFirst();
    }

    private static DeconTask moved(DeconTask task, Duration by) {
        return new DeconTask(
                task.kitSet(),
                task.crew(),
                task.fromWaters(),
                task.start().plus(by),
                task.crewFree().plus(by),
                task.released().plus(by),
                task.steps(),
                task.covers(),
                task.reason());
    }

    private static Activity moved(Activity activity, Instant start, Instant end) {
        return new Activity(
                activity.kind(),
                start,
                end,
                activity.place(),
                activity.site(),
                activity.part(),
                activity.method(),
                activity.kitSets(),
                activity.p50End().map(p50 -> p50.plus(Duration.between(activity.start(), start))),
                activity.note());
    }
}
