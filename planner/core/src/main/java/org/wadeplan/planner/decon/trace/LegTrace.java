package org.wadeplan.planner.decon.trace;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.Touch;
import org.wadeplan.planner.decon.trace.TraceReport.ChangedLeg;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** Follows a longer cleaning through the crew's day: its next departure, the end of the day, the rest after it. */
final class LegTrace {

    private final Round round;
    private final WeekPlan before;
    private final WeekPlan after;
    private final ExposureLedger ledger;
    private final TraceClock clock;
    private final List<Problem> broken = new ArrayList<>();

    /** @param ledger of the week after the change */
    LegTrace(Round round, WeekPlan before, WeekPlan after, ExposureLedger ledger) {
        this.round = round;
        this.before = before;
        this.after = after;
        this.ledger = ledger;
        this.clock = new TraceClock(round.header().zone());
    }

    /** What no longer holds, found while the legs were followed. */
    List<Problem> broken() {
        return List.copyOf(broken);
    }

    ChangedLeg leg(ChangedCleaning change) {
        int brokenBefore = broken.size();
        DeconTask was = change.before();
        DeconTask now = shifted(change);
        CrewDay day = day(after, was);
        Optional<String> use = use(now);
        Optional<String> departure = departure(was, now);
        return new ChangedLeg(
                was.kitSet(),
                was.crew(),
                now.start(),
                busyMin(was),
                busyMin(now),
                words(was),
                words(now),
                now.crewFree(),
                now.released(),
                use,
                departure,
                day.end(),
                rest(day),
                broken.size() == brokenBefore);
    }

    private DeconTask shifted(ChangedCleaning change) {
        return after.decon().stream()
                .filter(task -> task.kitSet().equals(change.after().kitSet())
                        && task.steps().equals(change.after().steps())
                        && !task.start().isBefore(change.before().start()))
                .min(Comparator.comparing(DeconTask::start))
                .orElse(change.after());
    }

    private static CrewDay day(WeekPlan week, DeconTask task) {
        return week.crewDays().stream()
                .filter(day -> day.crew().equals(task.crew())
                        && !day.start().isAfter(task.start())
                        && !day.end().isBefore(task.start()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "No day of crew " + task.crew() + " holds the cleaning of " + task.kitSet()));
    }

    private Optional<String> use(DeconTask now) {
        Optional<Touch> next = ledger.lane(now.kitSet()).stream()
                .flatMap(lane -> lane.touches().stream())
                .filter(touch -> touch.from().isAfter(now.start()))
                .findFirst();
        next.filter(touch -> touch.from().isBefore(now.released()))
                .ifPresent(touch -> broken.add(Problem.error(
                        "find-release-too-late",
                        place(now),
                        now.kitSet() + " is released at " + clock.at(now.released()) + ", after " + touch.where()
                                + " starts at " + clock.at(touch.from()),
                        "released before it is used",
                        "take another kit set for " + touch.where() + ", or start it later")));
        return next.map(touch -> touch.where() + ", " + clock.at(touch.from()));
    }

    private Optional<String> departure(DeconTask was, DeconTask now) {
        Optional<Activity> next = nextVisit(before, was);
        Optional<Activity> drive = day(before, was).activities().stream()
                .filter(activity -> activity.kind() == ActivityKind.TRAVEL
                        && !activity.start().isBefore(was.crewFree()))
                .findFirst();
        if (next.isEmpty() || drive.isEmpty()) {
            return Optional.empty();
        }
        long spareMin = Duration.between(now.crewFree(), drive.get().start()).toMinutes();
        long sparedMin = Duration.between(was.crewFree(), drive.get().start()).toMinutes();
        String visit = next.get().place() + " "
                + next.get().part().map(part -> part.word()).orElse("") + " at "
                + clock.time(next.get().start());
        if (spareMin < 0) {
            broken.add(Problem.error(
                    "find-departure-missed",
                    place(now),
                    "the cleaning ends at " + clock.at(now.crewFree()) + ", " + -spareMin
                            + " min after the crew has to leave for " + visit,
                    "cleaned and loaded before the crew leaves at "
                            + clock.time(drive.get().start()),
                    "start " + visit + " " + -spareMin
                            + " min later if its window allows, leave the set for another crew"
                            + " to clean, or take the visit off"));
        }
        String loading = spareMin >= round.header().duty().loadMin()
                ? ""
                : "; load while it is cleaned: loading is planned with "
                        + round.header().duty().loadMin() + " min";
        return Optional.of("leaves at " + clock.time(drive.get().start()) + " for " + visit + ": " + spareMin
                + " min after the cleaning (before the find " + sparedMin + ")" + loading);
    }

    private static Optional<Activity> nextVisit(WeekPlan week, DeconTask task) {
        return day(week, task).visits().stream()
                .filter(visit -> !visit.start().isBefore(task.crewFree()))
                .findFirst();
    }

    /** The shortest rest that anyone of the crew has before the next day. Too short a rest is found by the rules of the week. */
    private Optional<String> rest(CrewDay day) {
        Optional<Instant> next = after.crewDays().stream()
                .filter(other -> other.start().isAfter(day.start())
                        && other.people().stream().anyMatch(day.people()::contains))
                .map(CrewDay::start)
                .min(Comparator.naturalOrder());
        return next.map(start -> TraceClock.span(Duration.between(day.end(), start)) + " before " + clock.at(start)
                + " (asked: "
                + TraceClock.span(Duration.ofMinutes(round.header().duty().minRestMin()))
                + ")");
    }

    private static int busyMin(DeconTask task) {
        return task.steps().stream()
                .filter(DeconStep::crewBusy)
                .mapToInt(DeconStep::minutes)
                .sum();
    }

    private static String words(DeconTask task) {
        return task.steps().stream()
                .map(step -> step.step() + " " + step.minutes())
                .collect(Collectors.joining(", "));
    }

    private SourcePlace place(DeconTask task) {
        return SourcePlace.part(
                "week", "crew " + task.crew() + ", cleaning of " + task.kitSet() + " at " + clock.at(task.start()));
    }
}
