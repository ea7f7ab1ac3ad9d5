package org.wadeplan.planner.kit.wayout;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;

/** Ways out that take one visit off a day and put it on another, of the week or of the reserve. */
final class OtherDay {

    private final Replan replan;
    private final Round round;

    OtherDay(Replan replan) {
        this.replan = replan;
        this.round = replan.round();
    }

    /** On other days of the week, behind what a crew does there or on a day that it has free. */
    List<Change> inTheWeek(ShortDay day) {
        List<Change> changes = new ArrayList<>();
        for (CrewDay from : day.asking()) {
            for (Activity visit : movable(day, from)) {
                round.header()
                        .firstDay()
                        .datesUntil(round.header().lastDay().plusDays(1))
                        .filter(date -> !date.equals(day.date()))
                        .forEach(date -> changes.addAll(onDay(from, visit, date, WayCost.NONE)));
            }
        }
        return changes;
    }

    /** On reserve days, the first one first, with any crew and any vehicle that is not out. */
    List<Change> inTheReserve(ShortDay day) {
        List<Change> changes = new ArrayList<>();
        for (LocalDate date : round.header().reserveDays()) {
            for (CrewDay from : day.asking()) {
                movable(day, from).forEach(visit -> changes.addAll(onDay(from, visit, date, WayCost.RESERVE_DAY)));
            }
        }
        return changes;
    }

    /** Visits of one part: a set without its lift cannot move alone. */
    private List<Activity> movable(ShortDay day, CrewDay from) {
        return day.visits(round, from).stream()
                .filter(visit -> visit.method()
                        .flatMap(round::method)
                        .filter(method -> method.parts().size() == 1)
                        .isPresent())
                .toList();
    }

    private List<Change> onDay(CrewDay from, Activity visit, LocalDate date, WayCost cost) {
        List<Change> changes = new ArrayList<>();
        for (CrewDayRoster roster : round.roster()) {
            if (roster.date().equals(date)) {
                for (String vehicle : vehicles(roster)) {
                    changes.addAll(changes(from, visit, roster, vehicle, cost));
                }
            }
        }
        return changes;
    }

    private List<String> vehicles(CrewDayRoster roster) {
        List<String> vehicles = new ArrayList<>();
        vehicles.add(roster.vehicle());
        if (replan.before().day(roster.crew(), roster.date()).isEmpty()) {
            round.store().ofKind("vehicle").stream()
                    .map(StoreItem::id)
                    .filter(id -> !id.equals(roster.vehicle()) && idle(id, roster.date()))
                    .forEach(vehicles::add);
        }
        return vehicles;
    }

    private boolean idle(String vehicle, LocalDate date) {
        return replan.before().week().crewDays().stream()
                .noneMatch(day -> day.date().equals(date) && day.vehicle().equals(vehicle));
    }

    /** The move itself; and where only cleanings are left of the day, the same with them on the crew's next day. */
    private List<Change> changes(CrewDay from, Activity visit, CrewDayRoster roster, String vehicle, WayCost cost) {
        Duration by = Duration.ofDays(ChronoUnit.DAYS.between(from.date(), roster.date()))
                .plus(behind(from, roster));
        List<AgreedTask> moved = DayShift.onDay(replan.tasks(), moving(from, visit), roster.date(), roster.crew(), by);
        boolean own = vehicle.equals(roster.vehicle());
        String what = visit.place() + " to " + (cost == WayCost.RESERVE_DAY ? "reserve day " : "")
                + KitWords.day(roster.date()) + ", crew " + roster.crew() + (own ? "" : " in " + vehicle);
        Round changed = own ? round : Rosters.withVehicle(round, roster, vehicle);
        List<Change> changes = new ArrayList<>();
        changes.add(new Change(cost, what, changed, moved));
        if (moved.stream().filter(DayShift.of(from)).allMatch(AgreedTask::cleaning)) {
            DayShift.behind(moved, from, replan.next(from))
                    .ifPresent(tasks -> changes.add(new Change(
                            cost,
                            what,
                            changed,
                            tasks,
                            trial -> "crew " + from.crew() + " has " + KitWords.day(from.date())
                                    + " free, and what it cleaned then is cleaned on its next day")));
        }
        return changes;
    }

    /** Nothing on a free day; on a working day as much later as puts it behind that day's work. */
    private Duration behind(CrewDay from, CrewDayRoster roster) {
        return replan.before()
                .day(roster.crew(), roster.date())
                .map(day -> Duration.between(
                        from.start().plus(ChronoUnit.DAYS.between(from.date(), roster.date()), ChronoUnit.DAYS),
                        DayShift.cleaned(day)))
                .filter(by -> !by.isNegative())
                .orElse(Duration.ZERO);
    }

    /** The visit and the cleaning of its sets after it, as far as no other visit of the day uses them. */
    private static Predicate<AgreedTask> moving(CrewDay from, Activity visit) {
        TreeSet<String> alone = new TreeSet<>(visit.kitSets());
        from.visits().stream().filter(other -> !other.equals(visit)).forEach(other -> alone.removeAll(other.kitSets()));
        Predicate<AgreedTask> same =
                task -> task.site().equals(visit.site()) && task.part().equals(visit.part());
        Predicate<AgreedTask> cleaning = task -> task.cleaning()
                && alone.containsAll(task.kitSets())
                && !task.start().isBefore(visit.end());
        return DayShift.of(from).and(same.or(cleaning));
    }
}
