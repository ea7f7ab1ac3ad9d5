package org.wadeplan.planner.kit.wayout;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.LoadLine;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;

/** A kind on a day on which it is short, with the crew-days that ask for it. */
record ShortDay(String kind, LocalDate date, List<CrewDay> asking, double missing) {

    static List<ShortDay> of(Trial trial, String kind) {
        List<ShortDay> days = new ArrayList<>();
        for (Shortage shortage : trial.kit().shortages()) {
            if (shortage.kind().equals(kind)) {
                days.add(new ShortDay(
                        kind,
                        shortage.date(),
                        trial.week().crewDays().stream()
                                .filter(day -> day.date().equals(shortage.date())
                                        && shortage.crews().contains(day.crew()))
                                .toList(),
                        shortage.needed() - shortage.available()));
            }
        }
        return List.copyOf(days);
    }

    /** When the first of them loads. */
    Instant firstLoad() {
        return asking.stream()
                .map(CrewDay::start)
                .min(Instant::compareTo)
                .orElseThrow(() -> new IllegalStateException("nobody asks for " + kind + " on " + date));
    }

    /** Visits of a crew-day that need the kind. */
    List<Activity> visits(Round round, CrewDay day) {
        return day.visits().stream().filter(visit -> needs(round, visit)).toList();
    }

    private boolean needs(Round round, Activity visit) {
        return round.store().needs().stream()
                .filter(need -> need.kind().equals(kind))
                .anyMatch(need -> asks(need, visit));
    }

    private static boolean asks(KitNeed need, Activity visit) {
        return visit.method().filter(need.method()::equals).isPresent()
                && visit.part().filter(part -> part == need.part()).isPresent();
    }

    /** Serials of the kind that a crew takes that day. */
    Set<String> serials(KitPlan kit, CrewDay day) {
        Set<String> serials = new LinkedHashSet<>();
        kit.loads().stream()
                .filter(load -> load.crew().equals(day.crew()) && load.date().equals(date))
                .flatMap(load -> load.lines().stream())
                .filter(line -> line.kind().equals(kind))
                .map(LoadLine::items)
                .forEach(serials::addAll);
        return serials;
    }
}
