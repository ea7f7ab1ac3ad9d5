package org.wadeplan.planner.week.agreed;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.Travel;

/** Lines up a crew's day activity by activity. What does not fit before an agreed start is cut short, never moved. */
final class DayBuilder {

    private final List<Activity> activities = new ArrayList<>();
    private final Set<String> estimatedLegs = new TreeSet<>();
    private final Travel travel;
    private Instant clock;
    private String place;

    DayBuilder(Travel travel, String depot, Instant start) {
        this.travel = travel;
        this.place = depot;
        this.clock = start;
    }

    Instant clock() {
        return clock;
    }

    String place() {
        return place;
    }

    List<Activity> activities() {
        return List.copyOf(activities);
    }

    Set<String> estimatedLegs() {
        return estimatedLegs;
    }

    int driveMin(String to) {
        return travel.between(place, to).minutes();
    }

    /** Minutes left before an agreed start; 0 where it has passed. */
    int minutesUntil(Instant start) {
        return Math.toIntExact(Math.max(0, Duration.between(clock, start).toMinutes()));
    }

    void stay(ActivityKind kind, int minutes, List<String> kitSets, String note) {
        if (minutes > 0) {
            add(kind, clock.plus(Duration.ofMinutes(minutes)), kitSets, note);
        }
    }

    void waitUntil(Instant start, String note) {
        stay(ActivityKind.WAIT, minutesUntil(start), List.of(), note);
    }

    /** Drives, and arrives no later than an agreed start there. */
    void travelTo(String to, Optional<Instant> noLaterThan) {
        Travel.Drive drive = travel.between(place, to);
        int minutes = noLaterThan
                .map(start -> Math.min(drive.minutes(), minutesUntil(start)))
                .orElse(drive.minutes());
        if (drive.estimated()) {
            estimatedLegs.add(drive.words());
        }
        place = to;
        stay(ActivityKind.TRAVEL, minutes, List.of(), drive.words());
    }

    void visit(AgreedVisit visit) {
        activities.add(new Activity(
                ActivityKind.VISIT,
                visit.start(),
                visit.end(),
                visit.site().id(),
                Optional.of(visit.site().id()),
                Optional.of(visit.part().part()),
                Optional.of(visit.method()),
                visit.kitSets(),
                Optional.of(visit.p50End()),
                visit.task().note().orElse("")));
        place = visit.site().id();
        clock = visit.end();
    }

    void clean(Instant start, Instant until, List<String> kitSets) {
        clock = start;
        add(ActivityKind.DECON, until, kitSets, "");
    }

    private void add(ActivityKind kind, Instant end, List<String> kitSets, String note) {
        activities.add(new Activity(
                kind,
                clock,
                end,
                place,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                kitSets,
                Optional.empty(),
                note));
        clock = end;
    }
}
