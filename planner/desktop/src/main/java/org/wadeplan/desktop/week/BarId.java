package org.wadeplan.desktop.week;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;

/** How bars are named, and how to find again what a bar stands for. */
final class BarId {

    private BarId() {}

    static String of(CrewDay day, Activity activity) {
        return "crew " + day.crew() + " " + day.date() + " " + activity.start();
    }

    static String of(DeconTask task) {
        return "decon " + task.kitSet() + " " + task.start();
    }

    static String of(String kitSet, CrewDay day, Activity use) {
        return "kit " + kitSet + " " + of(day, use);
    }

    /** A stretch of a thing, on one day. */
    static String stretch(String thing, LocalDate date, BarKind kind) {
        return thing + "@" + date + kind;
    }

    static String thing(String id) {
        int at = id.indexOf('@');
        return at < 0 ? id : id.substring(0, at);
    }

    /** A crew's activity and the day it belongs to. */
    record Placed(CrewDay day, Activity activity) {}

    /** The activity of a crew's bar, or the use of a kit set's. */
    static Optional<Placed> activity(RoundPlan plan, String id) {
        String thing = thing(id);
        String crewPart = thing.startsWith("kit ") ? thing.substring(thing.indexOf("crew ")) : thing;
        for (CrewDay day : plan.week().crewDays()) {
            for (Activity activity : day.activities()) {
                if (of(day, activity).equals(crewPart)) {
                    return Optional.of(new Placed(day, activity));
                }
            }
        }
        return Optional.empty();
    }

    /** The cleaning of a kit set's bar. */
    static Optional<DeconTask> decon(RoundPlan plan, String id) {
        List<DeconTask> tasks = plan.week().decon();
        return tasks.stream().filter(task -> of(task).equals(thing(id))).findFirst();
    }
}
