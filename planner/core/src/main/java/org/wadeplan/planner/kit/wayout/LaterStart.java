package org.wadeplan.planner.kit.wayout;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.round.DayForecast;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;

/** Ways out that let a crew start later on a day: when something comes to the depot, or when the other crew is done with it. */
final class LaterStart {

    /** To take over and check something that comes in the course of the day, minutes (invented default). */
    static final int TAKE_OVER_MIN = 15;

    private final Replan replan;
    private final Round round;
    private final ZoneId zone;

    LaterStart(Replan replan) {
        this.replan = replan;
        this.round = replan.round();
        this.zone = round.header().zone();
    }

    /** Changes that do one thing in different ways: the first that works counts, or the first reason. */
    record Variants(List<Change> changes) {}

    /** A crew waits for an item that comes in the course of the day. */
    List<Variants> untilItComes(ShortDay day) {
        List<Variants> all = new ArrayList<>();
        for (StoreItem item : round.store().ofKind(day.kind())) {
            Optional<Instant> from = item.availableFrom().filter(time -> item.state() != StoreState.OUT_OF_SERVICE);
            for (CrewDay crewDay : day.asking()) {
                if (from.filter(time -> onThatDay(time, crewDay)).isPresent()) {
                    String with =
                            item.id() + " (" + item.label() + ", there from " + KitWords.clock(from.get(), zone) + ")";
                    all.add(new Variants(starts(round, crewDay, from.get(), TAKE_OVER_MIN, WayCost.HIRE, with)));
                }
            }
        }
        return all;
    }

    private boolean onThatDay(Instant time, CrewDay day) {
        return time.isAfter(day.start()) && time.atZone(zone).toLocalDate().equals(day.date());
    }

    /** One crew waits until the other has brought the item back and treated it. */
    List<Variants> sharing(ShortDay day) {
        List<Variants> all = new ArrayList<>();
        List<CrewDay> holders = day.asking().stream()
                .sorted(Comparator.comparing(DayShift::cleaned))
                .toList();
        for (CrewDay holder : holders) {
            for (CrewDay waiting : day.asking()) {
                if (!waiting.equals(holder)) {
                    shared(day, holder, waiting).ifPresent(all::add);
                }
            }
        }
        return all;
    }

    private Optional<Variants> shared(ShortDay day, CrewDay holder, CrewDay waiting) {
        Optional<StoreItem> item = round.store().ofKind(day.kind()).stream()
                .filter(one -> day.serials(replan.before().kit(), holder).contains(one.id())
                        || day.serials(replan.before().kit(), waiting).contains(one.id()))
                .findFirst();
        Optional<Instant> free = freeAgain(day, holder);
        if (item.isEmpty() || free.isEmpty()) {
            return Optional.empty();
        }
        Round again = StoreChange.added(round, StoreChange.from(item.get(), free.get()));
        String with = item.get().id() + " after crew " + holder.crew() + " (free and treated "
                + KitWords.clock(free.get(), zone) + ")";
        return Optional.of(new Variants(starts(again, waiting, free.get(), 0, WayCost.NONE, with)));
    }

    /** The end of the cleaning that follows the last visit with the item, or of the drive home where nothing is cleaned. */
    private Optional<Instant> freeAgain(ShortDay day, CrewDay holder) {
        Optional<Instant> used =
                day.visits(round, holder).stream().map(Activity::end).max(Comparator.naturalOrder());
        List<Activity> after = holder.activities().stream()
                .filter(activity ->
                        used.filter(end -> !activity.start().isBefore(end)).isPresent())
                .toList();
        Optional<Instant> back = after.stream()
                .filter(activity ->
                        activity.place().equals(round.header().depot().id()))
                .map(Activity::end)
                .findFirst();
        return after.stream()
                .filter(activity -> activity.kind() == ActivityKind.DECON)
                .map(Activity::end)
                .findFirst()
                .or(() -> back);
    }

    private List<Change> starts(Round changed, CrewDay day, Instant start, int checkMin, WayCost cost, String with) {
        Duration by = Duration.between(day.start(), start).plusMinutes(checkMin);
        String what = "crew " + day.crew() + " starts at " + KitWords.clock(start, zone) + " on "
                + KitWords.day(day.date()) + " with " + with;
        List<Change> changes = new ArrayList<>();
        changes.add(new Change(
                cost, what, changed, DayShift.later(replan.tasks(), day, by), trial -> remark(trial, day, false)));
        DayShift.laterWithoutOthers(replan.tasks(), day, by, replan.next(day))
                .map(tasks -> new Change(cost, what, changed, tasks, trial -> remark(trial, day, true)))
                .ifPresent(changes::add);
        return changes;
    }

    private String remark(Trial trial, CrewDay day, boolean othersMoved) {
        Optional<CrewDay> moved = trial.day(day.crew(), day.date());
        if (moved.isEmpty()) {
            return "";
        }
        String visits = moved.get().visits().stream()
                .map(visit -> visit.place() + " " + KitWords.clock(visit.start(), zone) + " to "
                        + KitWords.clock(visit.end(), zone))
                .collect(Collectors.joining(", "));
        String cleaned = ", all cleaned " + KitWords.clock(DayShift.cleaned(moved.get()), zone);
        return visits + cleaned + (othersMoved ? movedCleanings(trial, day) : "") + weather(day);
    }

    private String movedCleanings(Trial trial, CrewDay day) {
        return trial.week().decon().stream()
                .filter(task -> replan.tasks().stream()
                        .filter(DayShift.others(day))
                        .anyMatch(line -> line.kitSets().contains(task.kitSet())))
                .filter(task -> task.start().isAfter(day.start())
                        && !task.start().atZone(zone).toLocalDate().equals(day.date()))
                .limit(1)
                .map(task -> "; " + task.kitSet() + " is cleaned " + KitWords.moment(task.start(), zone) + " instead")
                .collect(Collectors.joining());
    }

    private String weather(CrewDay day) {
        return round.forecast().stream()
                .filter(forecast ->
                        forecast.date().equals(day.date()) && forecast.rainMm().orElse(0) > 0)
                .map(LaterStart::rain)
                .collect(Collectors.joining());
    }

    private static String rain(DayForecast forecast) {
        return "; but rain is forecast: " + KitWords.number(forecast.rainMm().orElse(0)) + " mm that day ("
                + forecast.source() + ")";
    }
}
