package org.wadeplan.planner.decon.schedule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** Reads out of a week who asks for the bench, and from when on set and crew are both there. */
final class BenchRequests {

    private final Round round;
    private final WeekPlan week;
    private final String depot;

    private BenchRequests(Round round, WeekPlan week) {
        this.round = round;
        this.week = week;
        this.depot = round.header().depot().id();
    }

    static List<BenchRequest> of(Round round, WeekPlan week) {
        BenchRequests requests = new BenchRequests(round, week);
        return week.decon().stream().map(requests::request).toList();
    }

    private BenchRequest request(DeconTask task) {
        Optional<CrewDay> day = crewDay(task.crew(), task.start());
        LocalDate date = day.map(CrewDay::date)
                .orElseGet(() -> task.start().atZone(round.header().zone()).toLocalDate());
        return new BenchRequest(
                task.kitSet(),
                task.crew(),
                date,
                crewSize(day, task.crew(), date),
                task.fromWaters(),
                task.start(),
                earliest(task, day),
                task.steps());
    }

    /** The crew-day that a moment belongs to, which may have begun before midnight. */
    private Optional<CrewDay> crewDay(String crew, Instant at) {
        return week.crewDays().stream()
                .filter(day -> day.crew().equals(crew) && !day.start().isAfter(at))
                .max(Comparator.comparing(CrewDay::date));
    }

    private int crewSize(Optional<CrewDay> day, String crew, LocalDate date) {
        int planned = day.map(CrewDay::people).map(List::size).orElse(0);
        int rostered = round.roster().stream()
                .filter(line -> line.crew().equals(crew) && line.date().equals(date))
                .map(CrewDayRoster::people)
                .mapToInt(List::size)
                .max()
                .orElse(1);
        return Math.max(1, planned > 0 ? planned : rostered);
    }

    private Instant earliest(DeconTask task, Optional<CrewDay> day) {
        Optional<Instant> crewBack = day.flatMap(one -> lastArrival(one, task.start()));
        Optional<Instant> setBack = setBack(task);
        if (crewBack.isEmpty() || setBack.isEmpty()) {
            return task.start();
        }
        Instant both = crewBack.get().isAfter(setBack.get()) ? crewBack.get() : setBack.get();
        return both.isAfter(task.start()) ? task.start() : both;
    }

    private Optional<Instant> lastArrival(CrewDay day, Instant notAfter) {
        return arrivals(day).filter(end -> !end.isAfter(notAfter)).max(Comparator.naturalOrder());
    }

    /** When the set came back to the depot after its last use before the cleaning. */
    private Optional<Instant> setBack(DeconTask task) {
        return week.crewDays().stream()
                .flatMap(day -> day.visits().stream()
                        .filter(visit -> visit.kitSets().contains(task.kitSet())
                                && !visit.end().isAfter(task.start()))
                        .map(visit -> new Use(day, visit)))
                .max(Comparator.comparing(use -> use.visit().end()))
                .flatMap(use -> arrivals(use.day())
                        .filter(end -> !end.isBefore(use.visit().end()))
                        .min(Comparator.naturalOrder()));
    }

    private record Use(CrewDay day, Activity visit) {}

    private Stream<Instant> arrivals(CrewDay day) {
        return day.activities().stream()
                .filter(activity -> activity.kind() == ActivityKind.TRAVEL
                        && activity.place().equals(depot))
                .map(Activity::end);
    }
}
