package org.wadeplan.planner.week;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** A crew's working day: from loading to unloading, past midnight where it runs on. */
public record CrewDay(String crew, LocalDate date, List<String> people, String vehicle, List<Activity> activities) {

    public Instant start() {
        return activities.get(0).start();
    }

    public Instant end() {
        return activities.get(activities.size() - 1).end();
    }

    public List<Activity> visits() {
        return activities.stream()
                .filter(activity -> activity.kind() == ActivityKind.VISIT)
                .toList();
    }
}
